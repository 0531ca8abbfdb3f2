using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

public class LoadPathTests
{
    public static TheoryData<string> Patterns() => [.. WiringLibrary.All.Select(w => w.Pattern)];

    [Theory, MemberData(nameof(Patterns))]
    public void The_feed_motor_s_path_runs_through_fuse_board_and_every_interlock_in_order(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        var path = LoadPath.To(wiring, ComponentIds.FeedMotor);
        Assert.Equal(Points.Live, path.Points.First());
        Assert.Equal(Points.Neutral, path.Points.Last());
        Assert.Equal(ComponentIds.Fuse, path.Parts[0].Id);
        Assert.Equal(wiring.FeedChain, path.Parts.OfType<Interlock>().Select(i => i.Id));
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Parts_of_every_path_join_end_to_end(string pattern) =>
        Assert.All(LoadPath.All(WiringLibrary.For(pattern)), path =>
            Assert.All(path.Parts.Zip(path.Parts.Skip(1)), pair => Assert.Equal(pair.First.To, pair.Second.From)));

    [Fact]
    public void A_card_s_order_of_interlocks_is_followed()
    {
        var wiring = WiringLibrary.For("damper-insert");
        string[] turned = [.. wiring.FeedChain.Reverse()];
        Assert.Equal(turned, LoadPath.To(wiring.WithFeedOrder(turned), ComponentIds.FeedMotor).Parts.OfType<Interlock>().Select(i => i.Id));
    }
}
