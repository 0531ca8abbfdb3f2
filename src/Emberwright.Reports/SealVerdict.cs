using System.Security.Cryptography;
using Emberwright.Visits;
using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace Emberwright.Reports;

/// <summary>
/// Whether a printed report and a visit file belong together: the seal's hash in the PDF file against the one in the visit file,
/// that one against everything it covers, and the pages against the same report printed again.
/// It shows a change; it does not tell who made it.
/// </summary>
/// <param name="Holds">True when nothing speaks against it.</param>
/// <param name="Words">The verdict in one sentence.</param>
/// <param name="Reasons">What was compared and how it came out, one sentence each.</param>
public sealed record SealVerdict(bool Holds, string Words, IReadOnlyList<string> Reasons)
{
    /// <summary>Compares.</summary>
    /// <param name="pdf">The report.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="again">Prints the report again in a given form, e.g. "si a4"; null compares no pages.</param>
    /// <exception cref="InvalidDataException">The file is not a PDF file.</exception>
    public static SealVerdict Of(byte[] pdf, Visit visit, Func<string, byte[]>? again)
    {
        ArgumentNullException.ThrowIfNull(visit);
        using var document = Open(pdf);
        if (PrintedSeal.Of(document) is not { } printed)
            return new(false, "No: this PDF file carries no seal.", ["It was printed before the visit was signed, or is no report of ours. Print it again from the signed visit."]);
        var (against, known) = Compare(printed, visit);
        return against.Count == 0 && again is not null && Differing(document, again(printed.Form), known) is { } differing
            ? new(false, "Not as it stands: the visit file is whole and the seal is the same, but the pages are not what this program prints from it.", [differing, .. known])
            : Verdict(against, known);
    }

    /// <summary>Compares a seal read from the code on paper.</summary>
    /// <param name="printed">The seal.</param>
    /// <param name="visit">The visit.</param>
    public static SealVerdict Of(PrintedSeal printed, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(printed);
        ArgumentNullException.ThrowIfNull(visit);
        var (against, known) = Compare(printed, visit);
        return Verdict(against, known);
    }

    private static (List<string> Against, List<string> Known) Compare(PrintedSeal printed, Visit visit)
    {
        List<string> against = [], known = [$"The report carries the seal {PrintedSeal.Short(printed.Hash)} of visit {printed.Visit}."];
        if (!string.Equals(visit.Id, printed.Visit, StringComparison.OrdinalIgnoreCase)) against.Add($"The visit file is of another visit, {visit.Id}.");
        if (visit.Seal is not { } seal) against.Add("The visit file is not signed: it holds no seal to compare with.");
        else
        {
            if (seal.Body.Hash == printed.Hash) known.Add("The visit file carries the same seal.");
            else against.Add($"The visit file carries another seal, {PrintedSeal.Short(seal.Body.Hash)}.");
            if (seal.Intact) known.Add($"Everything the seal covers is there and unchanged: {seal.Body.Covers.Count} entries and {seal.Body.Figures.Count} figures.");
            else against.Add(seal.Missing.Count > 0 ? $"{seal.Missing.Count} entries that the seal covers are missing." : "An entry or figure that the seal covers was changed.");
            if (seal.Addenda.Count > 0) known.Add($"{seal.Addenda.Count} {(seal.Addenda.Count == 1 ? "entry" : "entries")} came after the signature; they are not covered and not in the report.");
        }

        return (against, known);
    }

    private static SealVerdict Verdict(List<string> against, List<string> known) =>
        against.Count == 0
            ? new(true, "Yes: the report and the visit file belong together, and what was signed is unchanged.", known)
            : new(false, "No: the report and the visit file do not belong together as they are.", [.. against, .. known]);

    // Pages may differ for honest reasons (photos or letterhead kept elsewhere, another version of the program), and somebody
    // may have changed their words: only an eye can tell, so it is said and not passed over.
    private static string? Differing(PdfDocument document, byte[] again, List<string> known)
    {
        using var other = Open(again);
        var same = Enumerable.Range(0, Math.Min(document.PageCount, other.PageCount)).Where(i => Mark(document, i) == Mark(other, i)).Select(i => i + 1).ToArray();
        var differ = Enumerable.Range(1, document.PageCount).Except(same).ToArray();
        if (differ.Length == 0)
        {
            known.Add($"All {document.PageCount} pages are as this program prints them from the visit file.");
            return null;
        }

        return $"{(differ.Length == 1 ? "Page" : "Pages")} {string.Join(", ", differ)} differ{(differ.Length == 1 ? "s" : "")} from what this program prints from the file: the words may have been changed, photos or letterhead may lie elsewhere, or another version printed it. Give --photos, --firm and --language, or print it anew and compare by eye.";
    }

    private static string Mark(PdfDocument document, int page)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var content in document.Pages[page].Contents) hash.AppendData(content.Stream.UnfilteredValue);
        return Convert.ToHexString(hash.GetHashAndReset());
    }

    private static PdfDocument Open(byte[] pdf)
    {
        try
        {
            return PdfReader.Open(new MemoryStream(pdf), PdfDocumentOpenMode.Import);
        }
        catch (Exception e) when (e is PdfReaderException or InvalidOperationException)
        {
            throw new InvalidDataException($"This is not a PDF file that can be read ({e.Message.TrimEnd('.')}). Give the report first, the visit file second.", e);
        }
    }
}
