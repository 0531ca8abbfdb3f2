using System.Collections.Frozen;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Emberwright.Reports.Wording;

/// <summary>
/// The words of the papers in one language: sentences by name, with numbered places for what is put into them, and terms
/// that come from elsewhere (names of faults, checks, parts) by their English words. What a translation lacks stays English.
/// </summary>
public sealed partial class Language
{
    private static readonly Lazy<Language> Own = new(() => new Language(Embedded(), null));

    private readonly FrozenDictionary<string, string> _words;
    private readonly Func<string, string> _term;
    private readonly Language? _else;

    private Language(string json, Language? otherwise)
    {
        using var document = JsonDocument.Parse(json);
        var root = document.RootElement;
        Code = Member(root, "language") is { ValueKind: JsonValueKind.String } code ? code.GetString()! : throw new InvalidDataException("The member language is missing. Write the language's tag, such as \"fr\" (BCP 47).");
        _words = Strings(root, "words");
        var terms = Strings(root, "terms");
        _term = english => terms.GetValueOrDefault(english, english);
        _else = otherwise;
        if (otherwise is null) return;
        foreach (var (name, words) in _words)
        {
            if (!otherwise._words.TryGetValue(name, out var english)) throw new InvalidDataException($"words.{name} is no name of a sentence. See the English file for the names there are.");
            if (!Places(words).SetEquals(Places(english))) throw new InvalidDataException($"words.{name} is '{words}'; it must hold the same numbered places as '{english}'.");
        }
    }

    private Language(Language like, Func<string, string> term) => (Code, _words, _term, _else) = (like.Code, like._words, term, like._else);

    /// <summary>Our own words.</summary>
    public static Language English => Own.Value;

    /// <summary>The language's tag, BCP 47.</summary>
    public string Code { get; }

    /// <summary>Names of the sentences, to translate.</summary>
    public IEnumerable<string> Names => _words.Keys;

    /// <summary>Names of English sentences that this language lacks.</summary>
    public IEnumerable<string> Missing => English.Names.Where(name => !_words.ContainsKey(name));

    /// <summary>A sentence by its name.</summary>
    /// <exception cref="KeyNotFoundException">No sentence goes by it.</exception>
    public string this[string name] => _words.TryGetValue(name, out var words) ? words
        : _else is { } other ? other[name]
        : throw new KeyNotFoundException($"No sentence goes by the name '{name}'. Add it to Wording/en.json.");

    /// <summary>A term that comes from elsewhere; itself where the language has no word for it.</summary>
    public string Term(string english) => _term(english);

    /// <summary>The same sentences with terms by a rule; for a language that is made up to find what no translation reaches.</summary>
    internal Language With(Func<string, string> term) => new(this, term);

    /// <summary>Reads a translation.</summary>
    /// <param name="json">An object with language, words (name to sentence) and terms (English to translated).</param>
    /// <exception cref="InvalidDataException">It is no such object, a name is unknown, or a sentence lacks a place.</exception>
    public static Language Read(string json)
    {
        try
        {
            return new Language(json, English);
        }
        catch (JsonException e)
        {
            throw new InvalidDataException($"This is not JSON ({e.Message.TrimEnd('.')}). Begin from the English file.", e);
        }
    }

    private static HashSet<string> Places(string words) => [.. PlacePattern().Matches(words).Select(m => m.Value)];

    private static JsonElement? Member(JsonElement root, string name) =>
        root.ValueKind == JsonValueKind.Object && root.TryGetProperty(name, out var member) ? member : null;

    private static FrozenDictionary<string, string> Strings(JsonElement root, string name) => Member(root, name) is { ValueKind: JsonValueKind.Object } strings
        ? strings.EnumerateObject().ToFrozenDictionary(
            s => s.Name, s => s.Value.ValueKind == JsonValueKind.String ? s.Value.GetString()! : throw new InvalidDataException($"{name}.{s.Name} is not a text. Write it in quotation marks."))
        : FrozenDictionary<string, string>.Empty;

    private static string Embedded()
    {
        using var stream = typeof(Language).Assembly.GetManifestResourceStream("en.json")
            ?? throw new InvalidOperationException("The file en.json is not embedded in Emberwright.Reports. Build the project with its Wording folder.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex PlacePattern();
}
