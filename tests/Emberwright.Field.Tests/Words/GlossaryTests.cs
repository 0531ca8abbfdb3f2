using System.Text.RegularExpressions;
using Emberwright.Diagnosis.Checks;
using Emberwright.Field.Tests.Running;
using Emberwright.Field.Words;
using Xunit;

namespace Emberwright.Field.Tests.Words;

public class GlossaryTests
{
    // The words people search by, from the trade's everyday speech (common practice, no source).
    [Theory]
    [InlineData("auger motor", "Feed")]
    [InlineData("exhaust fan", "Combustion blower")]
    [InlineData("draft fan", "Combustion blower")]
    [InlineData("convection fan", "Room-air blower")]
    [InlineData("distribution fan", "Room-air blower")]
    [InlineData("snap disc", "High limit")]
    [InlineData("fire pot", "Burn pot")]
    [InlineData("outside air", "Air inlet")]
    [InlineData("red tag", "Stop-use notice")]
    public void People_find_a_thing_by_whatever_they_call_it(string typed, string found) =>
        Assert.Contains(Glossary.All.Where(term => Synonyms.Match($"{term.Name} {string.Join(' ', term.Also)}", typed)), term => term.Name == found);

    [Theory]
    [InlineData("exhaust fan", "combustion blower")]
    [InlineData("draft fan", "combustion blower")]
    [InlineData("convection fan", "room-air blower")]
    [InlineData("fire pot", "burn pot")]
    public void The_list_of_checks_knows_the_same_words(string typed, string named) =>
        Assert.Contains(CheckList.All.Where(check => Synonyms.Match(check.Name, typed)), check => check.Name.Contains(named, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Nothing_typed_matches_everything_and_nonsense_nothing()
    {
        Assert.All(Glossary.All, term => Assert.True(Synonyms.Match(term.Name, " ")));
        Assert.DoesNotContain(Glossary.All, term => Synonyms.Match(term.Name, "xyzzy"));
    }

    [Fact]
    public void Every_word_stands_once_and_every_question_mark_on_a_screen_leads_to_one()
    {
        Assert.Equal(Glossary.All.Count, Glossary.All.Select(term => term.Id).Distinct().Count());
        var asked = Directory.EnumerateFiles(Path.Combine(Repo.Root, "src", "Emberwright.Field"), "*.razor", SearchOption.AllDirectories)
            .SelectMany(file => Regex.Matches(File.ReadAllText(file), "<What Is=\"([^\"]+)\"").Select(m => m.Groups[1].Value)).ToArray();
        Assert.NotEmpty(asked);
        Assert.All(asked, id => Assert.NotNull(Glossary.Of(id)));
    }
}
