// Which pressures and temperatures does a virtual stove settle at for any fire and blower speed between its conditions?
// Equation: solve cold (blower off, on), low and high; between them the pressure is p_off + a(b)·s², a(b) linear in the burning share b,
//   and temperatures are linear in b. The same again with the room-air blower still gives the overheating stove.
//   Where a controller holds the pressure, four further burns between low and high are solved with it, and once more at its highest
//   setting: the pressure is the held one as long as p_off + a_most(b)·(s/s_b)² reaches it, then that.
// Symbols: b burning rate over the highest, s voltage share at the combustion blower (–), s_b the share a sound stove has at b (–),
//   a pull (Pa), p (Pa).
// Validity: 0 ≤ b ≤ 1.3, 0 ≤ s ≤ 1.1; beyond, the nearest value is taken.
// Assumptions: vacuum of a given passage goes with speed squared (fan laws); natural convection carries a quarter of the room air when
//   its blower stands, a twelfth of the water when the pump stands; the high-limit disc sees half the warm air's rise; a thermocouple near the flame sees a fixed share of
//   the firebox's rise, set so that the clean stove gives the usual voltage on high. All are our estimates, no source.
// Source: fan affinity laws; the rest follows from the virtual stove.
// Worked value: none published; at b and s of a solved condition it returns that solution.

using Emberwright.Stove.Controls.Sensors;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Equilibria of a virtual stove with given parameters, for driving its burn sequence.</summary>
public sealed class VirtualSteadyStove : ISteadyStove
{
    private const double StillAirShare = 0.25;
    private const double StillWaterShare = 1.0 / 12;
    private const double LimitShare = 0.5;
    private const double MostBurn = 1.3;
    private const int Steps = 5;

    private static readonly Parameter[] LeftToTheControls =
        [Parameter.Supply, Parameter.Feed, Parameter.SensedPressure, Parameter.SwitchThreshold, Parameter.SensorZero, Parameter.ProofSensor];

    private readonly double _offPa;
    private readonly double _coldPull;
    private readonly FirePoint[] _moving;
    private readonly FirePoint[] _still;
    private readonly double _flameShare;

    /// <summary>Solves the stove's conditions once.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="parameters">Its state of repair, indexed by <see cref="Parameter"/>. Supply, feed, switch and the proof's sensor are left to the controls; so are hose and pressure sensor where nothing is regulated by them.</param>
    /// <param name="thermocoupleHighV">Usual voltage of its thermocouple on high, V; null without one.</param>
    public VirtualSteadyStove(VirtualStove stove, ReadOnlySpan<double> parameters, double? thermocoupleHighV = null)
    {
        var p = parameters.ToArray();
        // A controller that holds the sensed pressure is led astray by its sensor and hose; without one they only mislead the board.
        foreach (var elsewhere in LeftToTheControls)
            if (stove.Pattern.Control is null || elsewhere is not (Parameter.SensedPressure or Parameter.SensorZero)) p[(int)elsewhere] = 0;
        RoomC = stove.Site.RoomC ?? ReferenceDay.RoomC;
        _offPa = stove.Solve(p, Condition.BlowerOff).Value(Measure.Pressure, Places.SwitchHose);
        _coldPull = (stove.Solve(p, Condition.FanOnly).Value(Measure.Pressure, Places.SwitchHose) - _offPa) * StartSpeedSquared(stove.Pattern);
        _moving = Points(stove, p);
        var still = p.ToArray();
        still[(int)Parameter.RoomAir] = Math.Log(stove.Pattern.Heat.StreamIsWater ? StillWaterShare : StillAirShare);
        _still = Points(stove, still);
        _flameShare = thermocoupleHighV is { } volts ? FlameShare(stove, volts) : 0;
    }

    /// <inheritdoc/>
    public double RoomC { get; }

    /// <inheritdoc/>
    public SteadyPoint At(double burnShare, double combustionShare, double roomAirShare, bool pumpTurns)
    {
        var s = Math.Clamp(combustionShare, 0, 1.1);
        if (burnShare <= 0) return new SteadyPoint(_offPa + _coldPull * s * s, RoomC, RoomC, RoomC, RoomC, false);
        var carried = roomAirShare > 0 || pumpTurns;
        var fire = Between(carried ? _moving : _still, Math.Min(burnShare, MostBurn));
        var (pa, air) = Drawn(fire, s);
        return new SteadyPoint(
            pa, fire.ExhaustC, RoomC + _flameShare * (fire.FireboxC - RoomC),
            RoomC + LimitShare * (fire.StreamC - RoomC), fire.StreamC, air < StoveSolution.LeastAirRatioOfAFire);
    }

    // Pressure at the sensing port and air ratio at a voltage share.
    private (double Pa, double AirRatio) Drawn(in FirePoint fire, double s)
    {
        if (fire.MostPull is not { } most) return (_offPa + fire.Pull * s * s, fire.AirRatio * s / fire.Share);
        var (held, can) = (fire.Pull * fire.Share * fire.Share, most * (s / fire.Share) * (s / fire.Share));
        return can <= held ? (_offPa + held, fire.AirRatio) : (_offPa + can, fire.AirRatio * Math.Sqrt(Math.Max(0, can / held)));
    }

    // A cold test may turn the blower faster than any start does; a start turns it no faster than the highest setting.
    private static double StartSpeedSquared(Pattern pattern)
    {
        var ratio = Math.Min(1, pattern.Levels[FireState.High].SpeedRatio / pattern.Levels[FireState.Cold].SpeedRatio);
        return ratio * ratio;
    }

    private FirePoint[] Points(VirtualStove stove, double[] parameters)
    {
        var most = stove.Pattern.Levels[FireState.High].FeedKgPerH;
        var low = stove.Pattern.Levels[FireState.Low].FeedKgPerH / most;
        return
        [
            new FirePoint(0, 1, _coldPull, null, RoomC, RoomC, RoomC, double.PositiveInfinity),
            Point(stove, parameters, Condition.LowBurn, low, Operations.LowCombustionShare),
            .. Modulated(stove, parameters, low),
            Point(stove, parameters, Condition.HighBurn, 1, 1),
        ];
    }

    // What lies between the lowest and the highest setting of a stove whose controller sets the speed.
    private IEnumerable<FirePoint> Modulated(VirtualStove stove, double[] parameters, double lowShare)
    {
        if (stove.Pattern.Control is not { } control) yield break;
        var (low, high) = (stove.Pattern.Levels[FireState.Low], stove.Pattern.Levels[FireState.High]);
        for (var k = 1; k < Steps; k++)
        {
            var t = (double)k / Steps;
            double Mix(double a, double b) => a + (b - a) * t;
            var level = high with
            {
                FeedKgPerH = Mix(low.FeedKgPerH, high.FeedKgPerH),
                SpeedRatio = Mix(low.SpeedRatio, high.SpeedRatio),
                StreamShare = Mix(low.StreamShare, high.StreamShare),
            };
            var setPoint = Mix(control.SetPointPa[FireState.Low], control.SetPointPa[FireState.High]);
            var between = With(stove, level, control with { SetPointPa = new Dictionary<FireState, double>(control.SetPointPa) { [FireState.High] = setPoint } });
            yield return Point(between, parameters, Condition.HighBurn, Mix(lowShare, 1), Mix(Operations.LowCombustionShare, 1));
        }
    }

    private FirePoint Point(VirtualStove stove, double[] parameters, Condition condition, double burnShare, double share)
    {
        var solved = stove.Solve(parameters, condition);
        var pull = (solved.Value(Measure.Pressure, Places.SwitchHose) - _offPa) / (share * share);
        var stream = solved.Knows(Measure.Temperature, Places.WarmAir) ? solved.Value(Measure.Temperature, Places.WarmAir) : RoomC;
        return new FirePoint(burnShare, share, pull, MostPull(stove, parameters, condition), solved.Value(Measure.Temperature, Places.Collar),
            solved.TemperatureC(stove.Pattern.Air.FireNode), stream, solved.PotAirRatio);
    }

    // Pull with the controller at its highest setting; null without one.
    private double? MostPull(VirtualStove stove, double[] parameters, Condition condition)
    {
        if (stove.Pattern.Control is not { } control) return null;
        var level = stove.Pattern.Levels[condition.Fire];
        var full = With(stove, level with { SpeedRatio = level.SpeedRatio * control.MostSetting }, null, condition.Fire);
        return full.Solve(parameters, condition).Value(Measure.Pressure, Places.SwitchHose) - _offPa;
    }

    private static VirtualStove With(VirtualStove stove, BurnLevel level, PressureControl? control, FireState fire = FireState.High) => new(
        stove.Pattern with { Levels = new Dictionary<FireState, BurnLevel>(stove.Pattern.Levels) { [fire] = level }, Control = control },
        stove.Card, stove.Site, stove.CardFit is { } fit ? [.. fit.Offsets] : new double[Enum.GetValues<Parameter>().Length]);

    private double FlameShare(VirtualStove stove, double highV)
    {
        var clean = stove.Solve(new double[Enum.GetValues<Parameter>().Length], Condition.HighBurn);
        var probeC = TypeK.Celsius(highV * 1000, 30);
        return (probeC - RoomC) / (clean.TemperatureC(stove.Pattern.Air.FireNode) - RoomC);
    }

    private static FirePoint Between(FirePoint[] points, double burn)
    {
        var i = 0;
        while (i < points.Length - 2 && burn >= points[i + 1].Burn) i++;
        var (a, b) = (points[i], points[i + 1]);
        var t = (burn - a.Burn) / (b.Burn - a.Burn);
        return new FirePoint(burn, Mix(a.Share, b.Share), Mix(a.Pull, b.Pull), a.MostPull is { } x && b.MostPull is { } y ? Mix(x, y) : null,
            Mix(a.ExhaustC, b.ExhaustC), Mix(a.FireboxC, b.FireboxC), Mix(a.StreamC, b.StreamC), i == 0 ? b.AirRatio : Mix(a.AirRatio, b.AirRatio));

        double Mix(double x, double y) => x + (y - x) * t;
    }

    private readonly record struct FirePoint(
        double Burn, double Share, double Pull, double? MostPull, double ExhaustC, double FireboxC, double StreamC, double AirRatio);
}
