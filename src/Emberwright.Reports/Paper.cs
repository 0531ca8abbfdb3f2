using System.Collections.Immutable;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;

namespace Emberwright.Reports;

/// <summary>
/// A document laid out: its sheets as scenes. Written as a PDF file to keep, or as pictures to look at, from the same
/// geometry.
/// </summary>
public sealed class Paper
{
    private readonly ImmutableArray<Bookmark> _bookmarks;
    private readonly PdfWords _words;

    internal Paper(ImmutableArray<Scene> sheets, ImmutableArray<Bookmark> bookmarks, PdfWords words) => (Sheets, _bookmarks, _words) = (sheets, bookmarks, words);

    /// <summary>The sheets, in points.</summary>
    public ImmutableArray<Scene> Sheets { get; }

    /// <summary>The file; the same input gives the same bytes.</summary>
    public byte[] Pdf() => PdfFile.Write(Sheets, _bookmarks, _words);

    /// <summary>Each sheet as SVG, for a page of the app.</summary>
    public IReadOnlyList<string> Pictures() => [.. Sheets.Select(SvgWriter.Inline)];
}
