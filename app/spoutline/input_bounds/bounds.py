"""The bounds of every reader in one table: how much of a file is taken in."""

from __future__ import annotations

from typing import Final

from spoutline.frozen import frozen


@frozen
class InputBounds:
    """What a reader takes at most; sizes in bytes, all else counted."""

    run_bytes: int = 200_000_000  # lines of a stopped run: 100,000 sites of about 1,700 bytes
    survey_bytes: int = 16_000_000  # one of 5,000 positions has 14 MB where every field is spelled out
    document_bytes: int = 16_000_000  # of a document that the program itself writes, such as agreed sets
    json_objects: int = 150_000  # objects and lists; a survey of 5,000 positions has about 100,000
    json_values: int = 450_000  # such a survey has about 425,000 where every field is spelled out
    json_entry_values: int = 5_000  # of one entry of a large document, such as a position
    json_members: int = 500  # fields of one object
    json_unknown: int = 2_000  # fields that no such document has; each of them would be told
    toml_bytes: int = 1_000_000
    toml_entries: int = 2_000  # of one table or list
    nesting: int = 40  # tables in tables; a terms file needs four
    stock_bytes: int = 10_000_000
    stock_lines: int = 100_000
    price_bytes: int = 20_000_000
    catalogue_bytes: int = 20_000_000
    exchange_bytes: int = 400_000_000  # of an exchange file; 100,000 parts need about 8,000,000
    exchange_unpacked_bytes: int = 2_000_000_000
    exchange_rows: int = 5_000_000  # a part has about three: itself and its prices
    form_bytes: int = 20_000_000
    form_objects: int = 100_000  # of the PDF; a form has about 110 for each position
    form_dictionaries: int = 400_000
    form_fields: int = 11_000  # about 35 for each position
    form_positions: int = 300
    tablet_bytes: int = 90_000_000  # of a form saved by the page for a tablet: the pictures below, and a third more
    tablet_total_bytes: int = 60_000_000  # of all pictures of such a form
    tablet_photo_bytes: int = 700_000  # of one photo, as the page scales it down
    tablet_photos: int = 8  # of one position
    picture_bytes: int = 20_000_000
    part_file_bytes: int = 20_000_000  # of a picture or document of a part
    part_document_pages: int = 400
    letterhead_bytes: int = 5_000_000
    picture_pieces: int = 20_000
    png_pixels: int = 16_000_000  # unpacked whole to be drawn, some 12 bytes each while it is
    jpeg_pixels: int = 51_000_000  # what the cameras of most telephones make at most
    table_bytes: int = 20_000_000  # of a workbook as it lies on the disk
    text_table_bytes: int = 10_000_000
    table_rows: int = 10_000  # a survey has at most 5,000 positions
    table_columns: int = 200
    table_cells: int = 500_000
    cell_characters: int = 32_767  # what a spreadsheet itself takes
    title_characters: int = 200  # a longer text is no title of a column
    pasted_characters: int = 2_000_000
    workbook_members: int = 2_000  # files in the archive
    workbook_bytes: int = 40_000_000  # of all files in the archive, unpacked
    style_elements: int = 60_000  # a spreadsheet keeps at most about 64,000 cell formats
    text_elements: int = 400_000  # of the shared texts
    cell_elements: int = 500_000  # of one sheet
    other_elements: int = 60_000  # of any other file of a workbook
    merged_cells: int = 1_000_000  # cells that merged ranges cover
    intake_bytes: int = 64_000_000  # of a supplier's table of parts or prices
    intake_rows: int = 200_000
    intake_cells: int = 3_000_000
    intake_workbook_bytes: int = 250_000_000  # unpacked, read as a stream
    intake_faults: int = 2_000  # told one by one, the others counted
    own_file_bytes: int = 64_000_000  # a larger file is no paper of the program
    problems: int = 2_000  # told one by one; a file with more is none of its kind


BOUNDS: Final = InputBounds()
