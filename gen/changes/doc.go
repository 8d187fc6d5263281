// Package changes says what became different from one published handbook to the next:
// which wall charts have another stamp and must be printed anew, and which rows of the
// computed tables have other values.
//
// It knows a handbook by its files of values (CSV) alone. A table's rows are told apart by
// their first columns: as many of them as it takes, so that no two rows of either handbook
// have the same. What follows is values. A column that came or went is a change of the
// program and not of the shop: it is named, and compared no further.
package changes
