using System.Text;
using System.Text.Json;

namespace Emberwright.Visits.Journal;

/// <summary>
/// A line of a visit file that keeps a person's words beside the entries, so that a file alone says whose stove it is:
/// <c>{"blob":"sha256:…","words":"salt, line feed, words"}</c>. It is no entry: dropping it changes no entry and no seal.
/// </summary>
internal static class WordsLine
{
    private const string Begins = "{\"blob\":";

    public static bool IsOne(string line) => line.StartsWith(Begins, StringComparison.Ordinal);

    public static string Write(KeyValuePair<string, string> kept) => BodyWriter.Object(w =>
    {
        w.Text("blob", kept.Key);
        w.Text("words", kept.Value);
    });

    /// <summary>What the line keeps; null, and it is said why, when it is not what its reference says.</summary>
    public static KeyValuePair<string, string>? Read(string line, int number, List<Problem> problems)
    {
        if (!IsOne(line)) return null;
        try
        {
            using var document = JsonDocument.Parse(line);
            var reader = new BodyReader(document.RootElement, number, "", problems);
            var (reference, words) = (reader.Text("blob") ?? "", reader.Text("words") ?? "");
            if (Blob.ReferenceTo(Encoding.UTF8.GetBytes(words)) == reference) return new(reference, words);
        }
        catch (JsonException)
        {
        }

        problems.Add(new(number, "words", "", "These words are not those that entries name.", "Take them from the file as it was handed over; the entries can be read without them."));
        return null;
    }
}
