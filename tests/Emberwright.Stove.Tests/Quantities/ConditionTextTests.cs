using CsCheck;
using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Stove.Tests.Quantities;

public class ConditionTextTests
{
    private static readonly Gen<Condition> AnyCondition = Gen.Select(
        Gen.Enum<FireState>(), Gen.Enum<BlowerState>(), Gen.Enum<OpeningState>(), (f, b, o) => new Condition(f, b, o));

    [Fact]
    public void The_canonical_words_read_back() =>
        AnyCondition.Sample(condition => ConditionText.Parse(ConditionText.Format(condition)) == condition);

    [Theory]
    [InlineData("fan only", "cold, on, closed")]
    [InlineData("Blower off", "cold, off, closed")]
    [InlineData("door open", "cold, on, door open")]
    [InlineData("intake stopped", "cold, on, intake stopped")]
    [InlineData("fan only, door open", "cold, on, door open")]
    [InlineData("high", "high, on, closed")]
    [InlineData("low burn", "low, on, closed")]
    [InlineData("high burn, door open", "high, on, door open")]
    [InlineData("igniting", "igniting, on, closed")]
    [InlineData("shutdown, blower off", "shutdown, off, closed")]
    public void Shorthands_of_the_trade_are_read(string text, string canonical) =>
        Assert.Equal(canonical, ConditionText.Format(ConditionText.Parse(text)!.Value));

    [Theory]
    [InlineData("")]
    [InlineData("warm")]
    [InlineData("cold, high")]
    [InlineData("on, off")]
    public void What_is_unknown_or_contradictory_is_refused(string text) => Assert.Null(ConditionText.Parse(text));

    [Fact]
    public void Every_measure_is_found_by_its_name()
    {
        foreach (var measure in Enum.GetValues<Measure>())
            Assert.Equal(measure, MeasureUnits.ByName(MeasureUnits.Name(measure)));
    }
}
