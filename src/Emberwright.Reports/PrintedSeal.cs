using PdfSharp.Pdf;

namespace Emberwright.Reports;

/// <summary>The seal as a printed report carries it: in its own data, beside the words and the code on its pages.</summary>
/// <param name="Visit">Id of the visit.</param>
/// <param name="Hash">The seal's hash, hexadecimal.</param>
/// <param name="Form">Units and paper the report was printed in, e.g. "si a4"; empty when it was read from the code alone.</param>
public sealed record PrintedSeal(string Visit, string Hash, string Form)
{
    private const string VisitKey = "/EmberwrightVisit";
    private const string HashKey = "/EmberwrightSeal";
    private const string FormKey = "/EmberwrightForm";

    /// <summary>What the code on the page says: capital letters, so that the code stays small.</summary>
    public string CodeText => $"EMBERWRIGHT SEAL 1 {Visit} {Hash}".ToUpperInvariant();

    /// <summary>Reads what a code says; null when it is no seal of ours.</summary>
    /// <param name="code">The code's text, in either case.</param>
    public static PrintedSeal? Read(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return code.ToLowerInvariant().Split(' ') is ["emberwright", "seal", "1", var visit, { Length: 64 } hash] && hash.All(char.IsAsciiHexDigit) ? new(visit, hash, "") : null;
    }

    /// <summary>The first digits, as the foot of each page shows them.</summary>
    public static string Short(string hash) => hash.Length >= 12 ? $"{hash[..4]} {hash[4..8]} {hash[8..12]}" : hash;

    /// <summary>Reads the seal a PDF file carries; null when it carries none.</summary>
    /// <param name="document">The opened file.</param>
    public static PrintedSeal? Of(PdfDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var info = document.Info.Elements;
        var hash = info.GetString(HashKey);
        return hash.Length == 0 ? null : new(info.GetString(VisitKey), hash, info.GetString(FormKey));
    }

    internal void Write(PdfDocumentInformation info)
    {
        info.Elements.SetString(VisitKey, Visit);
        info.Elements.SetString(HashKey, Hash);
        info.Elements.SetString(FormKey, Form);
    }
}
