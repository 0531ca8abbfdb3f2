using System.Reflection;
using System.Text.Json;

namespace Emberwright.Field.Words;

/// <summary>
/// Everything the app itself says, from one file per language (<c>Words/en.json</c> and its likes). A sentence that another
/// language lacks is said in English. What the engine says (questions, checks, causes, cautions) stands in the engine's own catalogues.
/// </summary>
public static class Say
{
    /// <summary>The language in which every sentence exists.</summary>
    public const string English = "en";

    /// <summary>
    /// A language for testing: English with marks on every letter that has one, in brackets. Whatever stands on a screen
    /// without them does not come from the file.
    /// </summary>
    public const string Marked = "qps";

    private static readonly Dictionary<string, string> InEnglish = Read(English)!;

    private static Dictionary<string, string> sentences = InEnglish;

    /// <summary>The language in use, by its tag.</summary>
    public static string Language { get; private set; } = English;

    /// <summary>The languages there are, each with its own name for itself.</summary>
    public static IReadOnlyList<(string Tag, string Name)> Languages =>
        [.. Assembly.GetExecutingAssembly().GetManifestResourceNames().Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Select(name => name[Folder.Length..^Ending.Length]).Order(StringComparer.Ordinal).Select(tag => (tag, Read(tag)!["language"]))];

    private const string Folder = "words/";
    private const string Ending = ".json";

    /// <summary>Chooses the language; one there is no file for is English.</summary>
    /// <param name="tag">Its tag, such as <c>en</c> or <c>de-CH</c>; the part after the hyphen is ignored.</param>
    public static void In(string? tag)
    {
        var wanted = tag?.Split('-')[0].ToLowerInvariant() ?? English;
        var read = wanted == Marked ? InEnglish.ToDictionary(said => said.Key, said => Marks.On(said.Value)) : Read(wanted);
        (Language, sentences) = read is null ? (English, InEnglish) : (wanted, read);
    }

    /// <summary>A sentence.</summary>
    /// <param name="key">Its key in the file.</param>
    /// <exception cref="KeyNotFoundException">Not even the English file has it.</exception>
    public static string T(string key) => sentences.GetValueOrDefault(key) ?? InEnglish[key];

    /// <summary>A sentence with what belongs into it; numbers are written as this phone's region does.</summary>
    /// <param name="key">Its key in the file.</param>
    /// <param name="with">What stands in the places of {0}, {1} and so on.</param>
    public static string T(string key, params object?[] with) => string.Format(Local.Culture, T(key), with);

    /// <summary>Words that stand in one line of the file, between upright bars; none when the line is missing.</summary>
    /// <param name="key">Its key in the file.</param>
    public static string[] List(string key) => (sentences.GetValueOrDefault(key) ?? InEnglish.GetValueOrDefault(key))?.Split(" | ") ?? [];

    /// <summary>The words of the page that paints before the app does, as a JSON object; null for English, which that page has by itself.</summary>
    public static string? Shell()
    {
        if (Language == English) return null;
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes))
        {
            writer.WriteStartObject();
            writer.WriteString("language", Language);
            foreach (var key in InEnglish.Keys.Where(key => key.StartsWith("shell.", StringComparison.Ordinal))) writer.WriteString(key, T(key));
            writer.WriteEndObject();
        }
        return System.Text.Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static Dictionary<string, string>? Read(string tag)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Folder + tag + Ending);
        if (stream is null) return null;
        using var document = JsonDocument.Parse(stream);
        return document.RootElement.EnumerateObject().ToDictionary(said => said.Name, said => said.Value.GetString()!);
    }
}
