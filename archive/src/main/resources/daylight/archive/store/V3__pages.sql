-- Finds visits and tickets by the day that stands in them, without reading what every book holds.
-- The expressions are those that are asked for, to the letter: only then are these used.
CREATE INDEX visit_of_day ON entry_now (
  substr(content, instr(char(10) || content, char(10) || 'date: ') + 6, 10)
) WHERE section = 'visits' AND instr(char(10) || content, char(10) || 'date: ') > 0;

CREATE INDEX ticket_of_day ON entry_now (
  substr(content, instr(char(10) || content, char(10) || 'expires: ') + 9, 10)
) WHERE section = 'tickets' AND instr(char(10) || content, char(10) || 'expires: ') > 0;

-- Whether anything was measured in a visit, and the sites in the order in which they are listed.
CREATE INDEX entry_within ON entry_now (book, parent, section);
CREATE INDEX site_of_name ON site_now (name, address, book);
