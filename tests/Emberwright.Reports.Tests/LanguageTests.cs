using System.Text.Json;
using System.Text.RegularExpressions;
using Emberwright.Reports.Pages;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Tests.FromVisit;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>
/// English is complete, and another language reaches every page: in a made-up language, each of whose words carries an
/// accent, no word without one is left but names and what was recorded.
/// </summary>
public partial class LanguageTests
{
    private static readonly Language MadeUp = Language.Read(JsonSerializer.Serialize(new
    {
        language = "x-made-up",
        words = Language.English.Names.ToDictionary(name => name, name => Accented(Language.English[name])),
    })).With(Accented);

    public static TheoryData<string> Papers => [.. EveryPaper.All.Keys];

    [Theory]
    [MemberData(nameof(Papers))]
    public void No_English_word_is_left_on_any_page(string name)
    {
        using var _ = Say.In(MadeUp);
        var paper = EveryPaper.All[name](PageFormat.A4, UnitSystem.Us);
        var left = paper.Sheets.SelectMany(s => Said(s.Shapes)).SelectMany(line => Words().Matches(line).Select(m => m.Value).Where(w => !IsData(w)).Select(w => $"{w}: {line}")).Distinct().ToArray();
        Assert.True(left.Length == 0, string.Join('\n', left));
        Assert.Equal("x-made-up", ReadBack.Language(paper.Pdf()));
    }

    [Fact]
    public void English_comes_back_when_the_other_language_is_put_away()
    {
        using (Say.In(MadeUp)) Assert.Equal("Måÿ Ï üsë mÿ stövë?", Say.Of("common.may-i-use-my-stove"));
        Assert.Equal("May I use my stove?", Say.Of("common.may-i-use-my-stove"));
        Assert.Equal("24 November 2026", Say.Day(new DateOnly(2026, 11, 24)));
    }

    [Fact]
    public async Task Two_papers_made_at_once_may_speak_two_languages()
    {
        var other = Task.Run(() =>
        {
            using var _ = Say.In(MadeUp);
            return Enumerable.Range(0, 200).Select(i => Say.Of("common.may-i-use-my-stove")).Distinct().ToArray();
        });
        var own = Enumerable.Range(0, 200).Select(i => Say.Of("common.may-i-use-my-stove")).Distinct().ToArray();
        Assert.Equal(["May I use my stove?"], own);
        Assert.Equal([Accented("May I use my stove?")], await other);
    }

    [Fact]
    public void Every_sentence_is_said_somewhere_and_every_name_said_is_there()
    {
        var folder = Path.Combine(GoldenPictureTests.Folder(), "..", "..", "..", "src", "Emberwright.Reports");
        var said = Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains("obj", StringComparison.Ordinal))
            .SelectMany(f => Named().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value)).ToHashSet();
        Assert.Empty(said.Except(Language.English.Names));
        Assert.Empty(Language.English.Names.Where(n => !n.StartsWith("month.", StringComparison.Ordinal) && n != "date.day").Except(said));
    }

    [Fact]
    public void What_a_translation_lacks_stays_English_and_is_listed()
    {
        var some = Language.Read("""{"language": "fr", "words": {"answer.yes": "Oui."}, "terms": {"fan only": "ventilateur seul"}}""");
        using var _ = Say.In(some);
        Assert.Equal("Oui.", Say.Of("answer.yes"));
        Assert.Equal("No.", Say.Of("answer.no"));
        Assert.Equal("ventilateur seul", Say.Term("fan only"));
        Assert.Equal(Language.English.Names.Count() - 1, some.Missing.Count());
        Assert.Contains("Oui.", ReadBack.All(ReportPdf.Render(SampleReport.Cleaned, PageFormat.A4)));
    }

    [Theory]
    [InlineData("not json", "This is not JSON")]
    [InlineData("[]", "language is missing")]
    [InlineData("""{"words": {}}""", "language is missing")]
    [InlineData("""{"language": "fr", "words": {"answer.yes": 3}}""", "words.answer.yes is not a text")]
    [InlineData("""{"language": "fr", "words": {"answer.maybe": "Peut-être."}}""", "words.answer.maybe is no name of a sentence")]
    [InlineData("""{"language": "fr", "words": {"quote.date": "la date"}}""", "must hold the same numbered places")]
    public void A_translation_that_is_wrong_is_refused_by_name(string json, string said) =>
        Assert.Contains(said, Assert.Throws<InvalidDataException>(() => Language.Read(json)).Message);

    private static IEnumerable<string> Said(IEnumerable<Shape> shapes) => shapes.SelectMany(shape => shape switch
    {
        Text text => [text.Words],
        Pictures.Group group => Said(group.Shapes),
        _ => Enumerable.Empty<string>(),
    });

    // Numbered places stay as they are.
    private static string Accented(string words) => Vowels().Replace(words, m => m.Value[0] switch
    {
        'a' => "å",
        'e' => "ë",
        'i' => "ï",
        'o' => "ö",
        'u' => "ü",
        'y' => "ÿ",
        'A' => "Å",
        'E' => "Ë",
        'I' => "Ï",
        'O' => "Ö",
        'U' => "Ü",
        'Y' => "Ÿ",
        _ => m.Value,
    });

    // Units, digits of a hash, and whatever was typed into the journal or stands on the letterhead.
    private static bool IsData(string word) => Recorded.Contains(word) || word.All(c => c is >= 'a' and <= 'f');

    private static HashSet<string> Recorded { get; } = new(
        Words().Matches(string.Join(' ',
            DemoVisits.Text("healthy-service"), DemoVisits.Text("ash-passages-full"), DemoVisits.Text("lights-then-stops"),
            EveryPaper.Firm.Name, EveryPaper.Firm.Contact, EveryPaper.Typed, "inWC ppm mph SHA")).Select(m => m.Value),
        StringComparer.OrdinalIgnoreCase);

    [GeneratedRegex("[aeiouyAEIOUY]")]
    private static partial Regex Vowels();

    [GeneratedRegex(@"(?<![\p{L}\d])[A-Za-z]{3,}(?![\p{L}\d])")]
    private static partial Regex Words();

    [GeneratedRegex("Say\\.Of\\(\\s*\"([^\"]+)\"")]
    private static partial Regex Named();
}
