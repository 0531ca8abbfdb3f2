using CsCheck;
using Emberwright.Field.Entering;
using Xunit;

namespace Emberwright.Field.Tests.Entering;

/// <summary>Typing on the pad, key by key.</summary>
public sealed class TypedTests
{
    private static Typed Press(string keys) => keys.Aggregate(Typed.Start(below: false), (typed, key) => key switch
    {
        '-' => typed.TurnSign(),
        '.' => typed.Point(),
        '<' => typed.Delete(),
        _ => typed.Digit(key),
    });

    [Theory]
    [InlineData("007", "7", 7.0)]
    [InlineData("-.09", "−0.09", -0.09)]
    [InlineData("0.0.9", "0.09", 0.09)]
    [InlineData("12-", "−12", -12.0)]
    [InlineData("12--", "12", 12.0)]
    [InlineData("12<3", "13", 13.0)]
    [InlineData("-", "−", null)]
    [InlineData("", "", null)]
    public void Keys_give_the_number_a_person_means(string keys, string text, double? value)
    {
        Assert.Equal(text, Press(keys).Text);
        Assert.Equal(value, Press(keys).Value);
    }

    [Theory]
    [InlineData("-0,031", "−0.031")]
    [InlineData(" 22 Pa", "22")]
    [InlineData("−7", "−7")]
    public void A_keyboard_or_a_paste_gives_the_same(string pasted, string text) => Assert.Equal(text, Typed.From(pasted).Text);

    [Fact]
    public void A_vacuum_starts_with_its_minus() => Assert.Equal(-7, Typed.Start(below: true).Digit('7').Value);

    [Fact]
    public void No_run_of_keys_gives_anything_but_a_number_or_the_beginning_of_one() =>
        Gen.Int[0, 12].Select(i => "0123456789.-<"[i]).Array[0, 30].Sample(keys =>
        {
            var typed = Press(new string(keys));
            Assert.Equal(typed, Typed.From(typed.Text));
            if (typed.Text is not ("" or "−")) Assert.True(typed.IsNumber, typed.Text);
        });
}
