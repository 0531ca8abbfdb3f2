using System.Text.Json;

namespace Emberwright.Stove.Patterns;

/// <summary>Something wrong in a JSON file.</summary>
/// <param name="Path">Where, e.g. <c>$.healthy[2].value</c>.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to do, as one sentence.</param>
public sealed record FileProblem(string Path, string Message, string Remedy);

/// <summary>
/// Reads and writes stove cards as JSON: quantities are strings with a unit, conditions words. Members not known are left
/// alone with no complaint; every problem is named with its path, not only the first.
/// </summary>
public static class CardFile
{
    /// <summary>Format name a card file begins with.</summary>
    public const string Format = "emberwright-card";

    /// <summary>Version of the format written.</summary>
    public const int Version = 1;

    /// <summary>Reads a card.</summary>
    /// <param name="json">The file's text.</param>
    /// <param name="problems">Receives every problem found.</param>
    /// <returns>The card, or null when there is any problem.</returns>
    public static StoveCard? Read(string json, out IReadOnlyList<FileProblem> problems)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var reader = new CardReader();
            var card = reader.Card(document.RootElement);
            problems = reader.Problems;
            return problems.Count == 0 ? card : null;
        }
        catch (JsonException e)
        {
            problems = [new FileProblem("$", $"not JSON at line {e.LineNumber + 1}", "Check brackets, commas and quotation marks there.")];
            return null;
        }
    }

    /// <summary>Writes a card so that <see cref="Read"/> gives it back.</summary>
    public static string Write(StoveCard card) => CardWriter.Write(card);
}
