using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>
/// The pressure profile: the way of the air from room to outdoors along x, pressure on y, the healthy band as a
/// ribbon, readings as marks, and a ledger of the changes along the way that sums to outdoors minus room.
/// Question it answers: where along the way is the slope wrong?
/// </summary>
public static class PressureProfile
{
    private enum KeyPlace
    {
        Inside,
        Below,
        Nowhere,
    }

    /// <summary>Draws the full form. The plot grows with its ports and its data, and never cuts either.</summary>
    /// <param name="input">What to show.</param>
    /// <param name="width">Width of the picture, picture units; at least 320. More when the words need it.</param>
    /// <exception cref="ArgumentException">The input cannot be drawn; the message names the field.</exception>
    public static Scene Draw(ProfileInput input, double width = 374)
    {
        return DrawAlike([input], width)[0];
    }

    /// <summary>Draws several profiles on one scale and with one height, to stand beside each other.</summary>
    /// <param name="inputs">What to show; at least one.</param>
    /// <param name="width">Width of each, picture units.</param>
    /// <param name="tickHeight">Height of one step of the axis, picture units.</param>
    /// <param name="alone">False leaves out the key, and the values in tags, where a table and words beside the picture hold them.</param>
    /// <exception cref="ArgumentException">An input cannot be drawn; the message names the field.</exception>
    public static ImmutableArray<Scene> DrawAlike(IReadOnlyList<ProfileInput> inputs, double width = 374, double tickHeight = 40, bool alone = true)
    {
        foreach (var input in inputs) input.Check();
        var alike = DrawOnOneScale(inputs, width, tickHeight, alone);
        var widest = alike.Max(s => s.View.Width);
        return widest <= width + 0.01 || inputs.Count == 1 ? alike : DrawOnOneScale(inputs, widest, tickHeight, alone);
    }

    private static ImmutableArray<Scene> DrawOnOneScale(IReadOnlyList<ProfileInput> inputs, double width, double tickHeight, bool alone)
    {
        var ticks = ProfileAxes.TicksFor(inputs);
        if (!alone) return Level([.. inputs.Select(input => Draw(input, width, ticks, tickHeight, KeyPlace.Nowhere)!)]);
        // A step or two further down often makes room for the key inside the plot.
        for (var extra = 0; extra <= 2; extra++)
        {
            var lower = ticks with { Low = ticks.Low - extra * ticks.Step };
            var scenes = inputs.Select(input => Draw(input, width, lower, tickHeight, KeyPlace.Inside)).OfType<Scene>().ToList();
            if (scenes.Count == inputs.Count) return Level(scenes);
        }

        return Level([.. inputs.Select(input => Draw(input, width, ticks, tickHeight, KeyPlace.Below)!)]);
    }

    private static ImmutableArray<Scene> Level(List<Scene> scenes)
    {
        var (top, bottom) = (scenes.Min(s => s.View.Y), scenes.Max(s => s.View.Bottom));
        return [.. scenes.Select(s => s with { View = Box.Between(s.View.X, top, s.View.Right, bottom) })];
    }

    private static Scene? Draw(ProfileInput input, double width, Ticks ticks, double tickHeight, KeyPlace place)
    {
        var height = Math.Round((ticks.High - ticks.Low) / ticks.Step) * tickHeight;
        var y = ProfileAxes.Heights(input.Unit, ticks, height);
        var axes = new ProfileAxes(input, ticks, y);
        var ledger = new LedgerRows(input);
        var left = Math.Max(38, axes.LeftWidth + 10);
        var right = axes.RightWidth + 6;
        List<double> names = [Roles.Word.Width(Say.Of("profile.room")), .. input.Stations.Select(s => ColumnWidth(input, s, place != KeyPlace.Nowhere)), Roles.Word.Width(Say.Of("profile.outdoors"))];
        var columns = Columns.Fit(left, Math.Max(width, 320) - 16 - left - right, ledger.Widths(left), names, right);
        var panel = new ProfilePanel(input, columns, y, small: false, tagValues: place != KeyPlace.Nowhere);
        var bottom = Math.Max(height, panel.Bottom);
        ImmutableArray<Shape>? key = place == KeyPlace.Inside ? ProfileKey.Place(input, columns, panel.Room, height) : [];
        if (key is null) return null;
        var top = Math.Min(panel.Top, place == KeyPlace.Nowhere ? -20 : -26);
        var rows = ledger.Draw(columns, bottom + 18, columns.Outdoors + right);
        var low = rows.Bottom;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(axes.Draw(columns));
        shapes.AddRange(panel.Shapes);
        shapes.AddRange(place == KeyPlace.Below ? ProfileKey.Below(input, columns.Outdoors + right, ref low) : key.Value);
        shapes.AddRange(rows.Shapes);
        var view = Box.Between(-8, top - 8, columns.Outdoors + right + 8, low + 8);
        return new Scene(input.Id, view, input.Title, ProfileWords.Describe(input), shapes.ToImmutable());
    }

    private static double ColumnWidth(ProfileInput input, ProfileStation s, bool tagValues)
    {
        var name = Roles.Name.Width(s.Name);
        return ProfileWords.IsOut(s) ? Math.Max(name, Marks.TagSize(tagValues ? input.Unit.Value(s.ReadingPa!.Value) : null, ProfileWords.Verdict(s)).Width) : name;
    }
}
