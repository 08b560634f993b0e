"""The view of a table on its way: file, columns, cells, repairs, changes; where its rows go."""
