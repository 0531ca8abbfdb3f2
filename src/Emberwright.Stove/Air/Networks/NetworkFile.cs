using System.Text.Json;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Air.Networks;

/// <summary>Reads a network from JSON: quantities are strings with a unit; every problem is named with its path.</summary>
public static class NetworkFile
{
    /// <summary>Format name a network file begins with.</summary>
    public const string Format = "emberwright-network";

    /// <summary>Version of the format read.</summary>
    public const int Version = 1;

    /// <summary>Reads a network.</summary>
    /// <param name="json">The file's text.</param>
    /// <param name="problems">Receives every problem found.</param>
    /// <returns>The network, or null when there is any problem.</returns>
    public static AirNetwork? Read(string json, out IReadOnlyList<FileProblem> problems)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var found = new JsonProblems();
            var network = new NetworkReader(found).Network(new JsonPlace(document.RootElement, "$", found));
            problems = found.Found;
            return problems.Count == 0 ? network : null;
        }
        catch (JsonException e)
        {
            problems = [new FileProblem("$", $"not JSON at line {e.LineNumber + 1}", "Check brackets, commas and quotation marks there.")];
            return null;
        }
    }
}
