namespace Emberwright.Reports.Pictures;

/// <summary>Breaks a text into lines.</summary>
internal static class Words
{
    /// <summary>
    /// Lines no wider than a measure, broken at spaces; a single word that is wider is broken inside.
    /// Line breaks in the text are kept. Nothing but the spaces at breaks is lost.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Widest line, in the lettering's unit.</param>
    /// <param name="lettering">Size and weight.</param>
    public static List<string> Wrap(string text, double width, Lettering lettering)
    {
        var lines = new List<string>();
        var space = lettering.Width(" ");
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            var line = "";
            var taken = 0.0;
            foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                // Without kerning a line is as wide as its words and spaces.
                var needed = lettering.Width(word);
                if (line.Length > 0 && taken + space + needed <= width)
                {
                    line = line + " " + word;
                    taken += space + needed;
                    continue;
                }

                if (line.Length > 0) lines.Add(line);
                (line, taken) = (word, needed);
                while (taken > width && Fitting(line, width, lettering) is var n && n < line.Length)
                {
                    lines.Add(line[..n]);
                    line = line[n..];
                    taken = lettering.Width(line);
                }
            }

            lines.Add(line);
        }

        return lines;
    }

    /// <summary>
    /// The same number of lines, but the last one not a single short word when narrower lines can avoid it.
    /// </summary>
    public static List<string> Pretty(string text, double width, Lettering lettering)
    {
        var lines = Wrap(text, width, lettering);
        if (lines.Count < 2) return lines;
        for (var narrower = width; narrower > 0.8 * width && IsOrphan(lines[^1], width, lettering); narrower *= 0.98)
        {
            var again = Wrap(text, narrower, lettering);
            if (again.Count > lines.Count) break;
            if (!IsOrphan(again[^1], width, lettering)) return again;
        }

        return lines;
    }

    private static bool IsOrphan(string line, double width, Lettering lettering) => !line.Contains(' ') && lettering.Width(line) < 0.3 * width;

    // How many characters of one long word fit: at least one, never half a surrogate pair.
    private static int Fitting(string word, double width, Lettering lettering)
    {
        int fits = 1, past = word.Length;
        while (past - fits > 1)
        {
            var middle = (fits + past) / 2;
            if (lettering.Width(word[..middle]) <= width) fits = middle;
            else past = middle;
        }

        return char.IsHighSurrogate(word[fits - 1]) ? fits + 1 : fits;
    }
}
