using Xunit;

namespace Emberwright.Cli.Tests;

public class PractiseCommandTests
{
    [Fact]
    public void A_way_is_typed_and_compared_with_the_planner_s_cost_by_cost()
    {
        var run = Run.OfInput("find ash passages\n1\nsafe\n1\nbill\nend\n", "practise", "--seed", "1", "--difficulty", "easy");

        Assert.Equal(ExitCodes.Ok, run.Code);
        Assert.Contains("Make the stove safe first", run.Out, StringComparison.Ordinal);
        Assert.Contains("Hidden: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("planner's", run.Out, StringComparison.Ordinal);
        Assert.Contains("In all", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_hidden_is_named_before_the_end()
    {
        var run = Run.OfInput("bill\n", "practise", "--seed", "1", "--difficulty", "easy");
        var hidden = Emberwright.Diagnosis.Practice.PracticeVisit.Begin(
            Emberwright.Stove.Patterns.PatternLibrary.Find("damper-insert")!, 1, Emberwright.Diagnosis.Practice.PracticeLevel.Plain).Hidden[0].Name;
        Assert.True(run.Out.IndexOf(hidden, StringComparison.Ordinal) > run.Out.IndexOf("You leave it as it is", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--difficulty", "brutal")]
    [InlineData("--pattern", "wood-stove")]
    public void Words_it_does_not_know_are_refused_with_those_it_does(string option, string value)
    {
        var run = Run.Of("practise", option, value);
        Assert.Equal(ExitCodes.BadInput, run.Code);
        Assert.Contains(value, run.Error, StringComparison.Ordinal);
    }
}
