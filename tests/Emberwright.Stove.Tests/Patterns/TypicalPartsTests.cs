using Emberwright.Stove.Controls;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Patterns;

/// <summary>Ratings usual in the trade, by mains voltage. Common practice, no source.</summary>
public class TypicalPartsTests
{
    public static TheoryData<string> Ids() => [.. PatternLibrary.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Parts_are_rated_as_the_trade_knows_them(string id)
    {
        var pattern = PatternLibrary.Find(id)!;
        var european = pattern.SupplyV > 200;
        var parts = TypicalParts.Of(pattern).ToDictionary(p => p.Rating.Component, p => p.Rating);
        var feed = parts[ComponentIds.FeedMotor];
        var blower = parts[ComponentIds.CombustionBlower];
        var igniter = parts[ComponentIds.Igniter];

        Assert.InRange(feed.CurrentA!.Value, 0.2, 0.7);
        Assert.InRange(feed.ResistanceOhm!.Value, european ? 100 : 25, european ? 600 : 150);
        Assert.InRange(blower.CurrentA!.Value, european ? 0.25 : 0.6, european ? 0.5 : 2);
        Assert.InRange(blower.ResistanceOhm!.Value, european ? 40 : 6, european ? 150 : 30);
        Assert.InRange(igniter.PowerW!.Value, 250, european ? 400 : 500);
        Assert.Equal(igniter.PowerW!.Value / pattern.SupplyV, igniter.CurrentA!.Value, 1e-9);
    }
}
