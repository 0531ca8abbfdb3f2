using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>The two pressure axes: the unit in use on the left, the other at its true heights on the right.</summary>
internal sealed class ProfileAxes(ProfileInput input, Ticks ticks, Func<double, double> y)
{
    private readonly Ticks _second = Ticks.Around(
        ticks.Low * input.Unit.PaPerUnit / input.SecondUnit.PaPerUnit, ticks.High * input.Unit.PaPerUnit / input.SecondUnit.PaPerUnit, 5);

    /// <summary>Width of the left axis' words.</summary>
    public double LeftWidth => Left.Append((0, input.Unit.Symbol)).Max(t => Roles.AxisWord.Width(t.Item2)) + 4;

    /// <summary>Width of the right axis' words.</summary>
    public double RightWidth => Right.Append((0, input.SecondUnit.Symbol)).Max(t => Roles.AxisWord.Width(t.Item2)) + 4;

    private IEnumerable<(double Pa, string Words)> Left => ticks.Between(ticks.Low, ticks.High)
        .Select(v => (v * input.Unit.PaPerUnit, Label(v, ticks)));

    private IEnumerable<(double Pa, string Words)> Right
    {
        get
        {
            var perUnit = input.SecondUnit.PaPerUnit;
            return _second.Between(ticks.Low * input.Unit.PaPerUnit / perUnit, ticks.High * input.Unit.PaPerUnit / perUnit)
                .Select(v => (v * perUnit, Label(v, _second)));
        }
    }

    /// <summary>Ticks of the left axis that hold everything the pictures show, in its unit.</summary>
    public static Ticks TicksFor(IReadOnlyList<ProfileInput> inputs)
    {
        var all = new List<double> { 0 };
        foreach (var input in inputs)
        {
            all.AddRange([input.Outdoors.LowPa, input.Outdoors.HighPa]);
            all.AddRange(input.Thresholds.Select(t => t.Pa));
            foreach (var s in input.Stations)
                all.AddRange(((double?[])[s.Healthy.LowPa, s.Healthy.HighPa, s.ReadingPa, s.LastPa, s.PredictedPa]).OfType<double>());
        }

        // A pascal or two of noise must not fill the page.
        var (low, high) = (all.Min(), all.Max());
        var spare = Math.Max(0, 10 - (high - low)) / 2;
        var unit = inputs[0].Unit.PaPerUnit;
        return Ticks.Around((low - spare) / unit, (high + spare) / unit, 6);
    }

    private static string Label(double value, Ticks of) => value == 0 ? "0" : Figures.Signed(value, of.Decimals);

    /// <summary>y of a pressure, with the highest tick at 0.</summary>
    public static Func<double, double> Heights(PressureUnit unit, Ticks ticks, double height) =>
        pa => (ticks.High - pa / unit.PaPerUnit) / (ticks.High - ticks.Low) * height;

    /// <summary>Ticks, numbers, units.</summary>
    public ImmutableArray<Shape> Draw(Columns columns)
    {
        var made = ImmutableArray.CreateBuilder<Shape>();
        double l = columns.Room - 6, r = columns.Outdoors + 6;
        made.Add(new Text(new(l, -16), input.Unit.Symbol, Roles.AxisWord, Anchor.End));
        made.Add(new Text(new(r, -16), input.SecondUnit.Symbol, Roles.AxisWord));
        foreach (var (pa, words) in Left)
        {
            if (pa != 0) made.Add(new Line(new(columns.Room - 3, y(pa)), new(columns.Room + 2, y(pa)), Roles.Axis));
            made.Add(new Text(new(l, y(pa) + 4), words, Roles.AxisWord, Anchor.End));
        }

        foreach (var (pa, words) in Right)
        {
            if (pa != 0) made.Add(new Line(new(columns.Outdoors - 2, y(pa)), new(columns.Outdoors + 3, y(pa)), Roles.Axis));
            made.Add(new Text(new(r, y(pa) + 4), words, Roles.AxisWord));
        }

        return made.ToImmutable();
    }
}
