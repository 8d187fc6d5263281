// Package faults computes fault keys: which check or remedy to take first, and which
// after each outcome, so that the expected cost until the fault is gone is least.
package faults
