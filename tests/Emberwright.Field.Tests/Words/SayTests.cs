using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using System.Text.Json;
using System.Text.RegularExpressions;
using Emberwright.Field.Tests.Running;
using Emberwright.Field.Words;
using Emberwright.Stove.Faults;
using Emberwright.Visits.Firm;
using Xunit;

namespace Emberwright.Field.Tests.Words;

/// <summary>Everything the app says stands in one file per language, and nowhere else.</summary>
public sealed partial class SayTests
{
    private static readonly string Sources = Path.Combine(Repo.Root, "src", "Emberwright.Field");

    private static readonly Dictionary<string, string> English =
        JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(Path.Combine(Sources, "Words", "en.json")))!;

    // What no person reads: reasons written into journals, messages to the browser's console, words of other programs.
    private static readonly string[] NotSaid =
    [
        "taken back", "signed on", "erased on request", "group today", "The store refused: {Reason}", "The engine stopped on visit {Visit}", "No word goes by '",
        "Another tab writes to this visit all the time. Close it.", "no room", "older version", "word.", "shell.",
        // Constants of the engine, and what the JSON source generator writes.
        Cautions.Discharge, Reckoning.Fee, "The converter '{0}' is not compatible with the type '{1}'.", "The converter '{0}' cannot return null or a JsonConverterFactory instance.",
        "Setting init-only properties is not supported in source generation mode.",
    ];

    private static readonly HashSet<string> Classes =
        [.. Directory.EnumerateFiles(Path.Combine(Sources, "wwwroot", "css"), "*.css").SelectMany(file => StyleClass().Matches(File.ReadAllText(file))).Select(m => m.Groups[1].Value)];

    [Fact]
    public void Every_sentence_asked_for_exists_and_every_sentence_is_asked_for()
    {
        var asked = Files("*.razor", "*.cs").SelectMany(file => Asked().Matches(File.ReadAllText(file))).Select(m => m.Groups[1].Value).ToHashSet();
        Assert.True(asked.Count > 500, "The sources no longer ask for sentences as this test reads them.");
        Assert.Empty(asked.Except(English.Keys));
        Assert.Empty(English.Keys.Where(key => !asked.Contains(key) && key.Split('.')[0] is not ("word" or "shell" or "language")));
    }

    [Fact]
    public void A_sentence_is_given_all_that_belongs_into_it()
    {
        var holes = Files("*.razor", "*.cs").SelectMany(file => Alone().Matches(File.ReadAllText(file)))
            .Select(m => m.Groups[1].Value).Where(key => English.TryGetValue(key, out var said) && said.Contains('{', StringComparison.Ordinal));
        Assert.Empty(holes);
    }

    [Fact]
    public void No_razor_file_holds_words_of_its_own()
    {
        var files = Files("*.razor");
        Assert.True(files.Length > 60);
        Assert.Empty(files.SelectMany(file => Markup.WordsIn(File.ReadAllText(file)).Select(words => $"{Path.GetFileName(file)}: {words}")));
    }

    [Fact]
    public void The_compiled_app_holds_no_sentence_of_its_own()
    {
        using var stream = File.OpenRead(typeof(Say).Assembly.Location);
        using var image = new PEReader(stream);
        var reader = image.GetMetadataReader();
        var found = new List<string>();
        for (var handle = MetadataTokens.UserStringHandle(1); !handle.IsNil; handle = reader.GetNextHandle(handle))
        {
            var text = reader.GetUserString(handle);
            // Markup the compiler joined, keys, styles and drawn paths are no sentences.
            if (text.Contains('<', StringComparison.Ordinal) ? BetweenTags().IsMatch(text) : Sentence().IsMatch(text) && !English.ContainsKey(text) && !NotSaid.Contains(text) && !DatePattern().IsMatch(text) && !text.Split(' ').All(Classes.Contains)) found.Add(text);
        }
        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    [Fact]
    public void The_page_that_paints_before_the_app_says_what_the_file_says()
    {
        var page = File.ReadAllText(Path.Combine(Sources, "wwwroot", "index.html"));
        var said = InShell().Matches(page).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
        Assert.Equal(English.Where(one => one.Key.StartsWith("shell.", StringComparison.Ordinal)).OrderBy(one => one.Key), said.OrderBy(one => one.Key));
    }

    [Fact]
    public void A_word_written_straight_into_a_page_is_found()
    {
        Assert.Equal(["Back"], Markup.WordsIn("<a href=\"\">Back</a>"));
        Assert.Equal(["Which"], Markup.WordsIn("<p aria-label=\"Which\">@T(\"x.y\")</p>"));
        Assert.Empty(Markup.WordsIn("@* A remark. *@<p class=\"small\">@T(\"x.y\") @(open ? 1 : 2)</p>\n@code { string s = \"Back\"; }"));
    }

    [Fact]
    public void The_language_for_testing_marks_every_sentence_and_keeps_what_is_filled_in()
    {
        Assert.Equal("⟦{0} ñóvíç⟧", Marks.On("{0} novic"));
        Assert.Equal("⟦áb⟧ | ⟦ç⟧", Marks.On("ab | c"));
    }

    private static string[] Files(params string[] patterns) =>
        [.. patterns.SelectMany(pattern => Directory.EnumerateFiles(Sources, pattern, SearchOption.AllDirectories)).Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))];

    [GeneratedRegex("""\b(?:T|List)\("([\w.-]+)"[,)]""")]
    private static partial Regex Asked();

    [GeneratedRegex("""\bT\("([\w.-]+)"\)""")]
    private static partial Regex Alone();

    [GeneratedRegex("""data-say="([\w.-]+)"[^>]*>([^<]*)<""")]
    private static partial Regex InShell();

    [GeneratedRegex(@"^[dMyHhmt:, ]+$")]
    private static partial Regex DatePattern();

    [GeneratedRegex(@"\.([a-z][a-z0-9-]*)")]
    private static partial Regex StyleClass();

    [GeneratedRegex(">[^<]*[A-Za-z]{2}[^<]*<")]
    private static partial Regex BetweenTags();

    [GeneratedRegex(@"^[^/=#]*[A-Za-z’,;:]{2,} [A-Za-z]{2,}[^=]*$|^[A-Z][a-z]+ [a-z]|[a-z][.!?…]$")]
    private static partial Regex Sentence();
}
