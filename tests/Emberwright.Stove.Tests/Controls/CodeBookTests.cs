using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>A code means what the card says; one that is not listed is never guessed.</summary>
public class CodeBookTests
{
    private static readonly StoveCard Card = new()
    {
        Pattern = "thermocouple-freestanding",
        Codes = [new CardCode("E-02", "no flame") { Alarm = Alarms.NoFire }, new CardCode("3 blinks", "vacuum lost"), new CardCode("7", Alarms.Door)],
    };

    [Theory]
    [InlineData("e02")]
    [InlineData("Error E 02")]
    [InlineData("code E-02")]
    public void Spelling_is_forgiven(string shown) => Assert.Equal((CodeSource.OnCard, "no flame", Alarms.NoFire), Told(CodeBook.Read(shown, Card)));

    [Theory]
    [InlineData("three flashes")]
    [InlineData("3x")]
    [InlineData("blinks 3")]
    [InlineData("red lamp flashes 3 times")]
    public void A_blink_count_is_one_however_it_is_said(string shown) => Assert.Equal((CodeSource.OnCard, "vacuum lost", null), Told(CodeBook.Read(shown, Card)));

    [Theory]
    [InlineData("E2")]
    [InlineData("2 blinks")]
    [InlineData("3")]
    [InlineData("E-20")]
    public void A_code_that_is_not_listed_has_no_meaning_and_says_so(string shown)
    {
        var read = CodeBook.Read(shown, Card);
        Assert.Equal((CodeSource.NotOnCard, null, null), Told(read));
        Assert.Equal($"{shown}: not on this card", read.InWords);
    }

    [Fact]
    public void Without_a_card_nothing_is_guessed() => Assert.Equal(CodeSource.NoCard, CodeBook.Read("3 blinks", null).Source);

    private static (CodeSource, string?, string?) Told(CodeMeaning read) => (read.Source, read.Words, read.Alarm);
}
