using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove;

/// <summary>The solved stove: every pressure, flow and temperature, what can be read, and how well it was solved.</summary>
public sealed class StoveSolution : StoveState
{
    private readonly StoveModel model;
    private readonly Scenario scenario;
    private readonly UnknownLayout at;
    private readonly double[] z;
    private readonly SolveTrace trace;
    private double[]? slopes;

    internal StoveSolution(StoveModel model, Scenario scenario, UnknownLayout at, double[] z, SolveTrace trace, Condition condition, bool fireIsOut)
    {
        this.model = model;
        this.scenario = scenario;
        this.at = at;
        this.z = z;
        this.trace = trace;
        Condition = condition;
        PotAirRatio = scenario.IsBurning ? Readings.PotAir(scenario, at, z) / scenario.Burn.NeedKgPerS : double.PositiveInfinity;
        FlueAirRatio = scenario.IsBurning ? Readings.AirRatio(scenario, at, z, model.FlueNode, out _) : double.PositiveInfinity;
        Status = trace.Converged switch
        {
            false => SolveStatus.NotConverged,
            true when fireIsOut || PotAirRatio < LeastAirRatioOfAFire => SolveStatus.NoSteadyFire,
            true when PotAirRatio < 1 => SolveStatus.FireStarved,
            true => SolveStatus.Converged,
        };
    }

    /// <summary>Pot air ratio below which no fire lasts; a round number, no source.</summary>
    public const double LeastAirRatioOfAFire = 0.5;

    /// <inheritdoc/>
    public override Condition Condition { get; }

    /// <inheritdoc/>
    public override SolveStatus Status { get; }

    /// <summary>Steps taken, flow steps and Newton steps together.</summary>
    public int Iterations => trace.Iterations;

    /// <summary>Which way solved it: 1 Newton's method, 2 after damped nesting, 3 after switching the heat on in steps.</summary>
    public int Attempt => trace.Attempt;

    /// <summary>Largest mass residual of a node, kg/s.</summary>
    public double MassResidualKgPerS => trace.MassKgPerS;

    /// <summary>Largest pressure residual of a link, Pa.</summary>
    public double PressureResidualPa => trace.PressurePa;

    /// <summary>The equation that is met worst, by its link or node, e.g. <c>exchanger: pressure</c>.</summary>
    public string WorstResidual => trace.WorstRow switch
    {
        var r when r < at.Links => model.Pattern.Air.Links[r].Id + ": pressure",
        var r when at.IsControlled && r == at.Control => "controller: pressure",
        var r => model.Pattern.Air.Nodes[(r - at.Links) % at.Nodes].Id + ((r - at.Links) / at.Nodes) switch
        {
            0 => ": mass",
            1 => ": heat",
            _ => ": composition",
        },
    };

    /// <summary>Air through the burn pot over the air its fuel needs; +∞ without fire.</summary>
    public double PotAirRatio { get; }

    /// <summary>Air in the flue gas over the air the fuel needs; +∞ without fire.</summary>
    public double FlueAirRatio { get; }

    /// <summary>Links of the air path by id, in the order of <see cref="MassFlowKgPerS(string)"/>.</summary>
    public IReadOnlyList<Link> Links => model.Pattern.Air.Links;

    /// <summary>Mass flow of a link, kg/s; positive from its first to its second end.</summary>
    public double MassFlowKgPerS(string link) => z[at.Q(model.LinkIndex(link))];

    /// <summary>Total pressure of a node against still outdoor air at its height, Pa.</summary>
    public double TotalPressurePa(string node) => z[at.P(model.NodeIndex(node))];

    /// <summary>Temperature of a node, °C.</summary>
    public double TemperatureC(string node) => z[at.T(model.NodeIndex(node))] - 273.15;

    /// <summary>Speed of the combustion blower over that of its curve, –.</summary>
    public double BlowerSpeedRatio => scenario.Speed * at.Setting(z);

    /// <summary>Ambient pressure, Pa.</summary>
    public double AmbientPa => scenario.PressurePa;

    internal ReadOnlySpan<double> Unknowns => z;

    internal Scenario Scenario => scenario;

    internal Link Vent => model.Pattern.Air.Links.First(l => l is VentLink);

    internal double LossFactor(string link) => scenario.LossFactor[model.LinkIndex(link)];

    /// <summary>The link air enters by.</summary>
    internal LinkModel MainPathStart => scenario.Links[MainPath()[0]];

    /// <summary>Links from air supply to terminal through the burn pot, in order.</summary>
    internal IReadOnlyList<int> MainPath()
    {
        var path = new List<int>();
        var end = -2;
        while (end != -3)
        {
            var next = Enumerable.Range(0, scenario.Links.Length).First(l => scenario.Links[l].From == end && scenario.Links[l].To != -1);
            path.Add(next);
            end = scenario.Links[next].To;
        }

        return path;
    }

    /// <summary>A link of this stove at the flow, temperatures and blower speed of another state.</summary>
    internal LinkPoint PointAt(int l, StoveSolution other)
    {
        ref readonly var link = ref scenario.Links[l];
        var point = default(LinkPoint);
        point.Evaluate(link, scenario.Duty(l, other.at.Setting(other.z)), other.z[other.at.Q(l)],
            link.From >= 0 ? other.z[other.at.T(link.From)] : scenario.BoundaryK(link.From),
            link.To >= 0 ? other.z[other.at.T(link.To)] : scenario.BoundaryK(link.To));
        return point;
    }

    internal double NodePa(int node) => z[at.P(node)];

    internal StoveModel Model => model;

    /// <inheritdoc/>
    public override bool Knows(Measure measure, string place)
    {
        var reading = new Reading([], []);
        return Observe(measure, place, ref reading);
    }

    /// <inheritdoc/>
    public override double Value(Measure measure, string place)
    {
        var reading = new Reading([], []);
        return Observe(measure, place, ref reading) ? reading.Value : double.NaN;
    }

    /// <inheritdoc/>
    public override void Sensitivity(Measure measure, string place, Span<double> gradient)
    {
        if (gradient.Length != ParameterSlopes.Parameters)
        {
            throw new InputException("gradient", $"{gradient.Length} places given for {ParameterSlopes.Parameters} parameters", "Give one place per parameter.");
        }

        gradient.Clear();
        var n = at.Count;
        Span<double> byUnknown = stackalloc double[n];
        byUnknown.Clear();
        var reading = new Reading(byUnknown, gradient);
        if (!Observe(measure, place, ref reading))
        {
            gradient.Fill(double.NaN);
            return;
        }

        var table = slopes ??= ParameterSlopes.At(scenario, at, z);
        for (var k = 0; k < gradient.Length; k++)
        {
            var row = table.AsSpan(k * n, n);
            double sum = 0;
            for (var i = 0; i < n; i++)
            {
                sum += row[i] * byUnknown[i];
            }

            gradient[k] += sum;
        }
    }

    private bool Observe(Measure measure, string place, ref Reading reading)
    {
        switch (measure)
        {
            case Measure.Pressure:
                return ObservePressure(place, ref reading);
            case Measure.Temperature:
                return ObserveTemperature(place, ref reading);
            case Measure.Oxygen when scenario.IsBurning && place == Places.Flue:
                Readings.DryGas(scenario, at, z, model.FlueNode, oxygen: true, ref reading);
                return true;
            case Measure.CarbonDioxide when scenario.IsBurning && place == Places.Flue:
                Readings.DryGas(scenario, at, z, model.FlueNode, oxygen: false, ref reading);
                return true;
            case Measure.CarbonMonoxide when scenario.IsBurning && place == Places.Flue:
                Readings.CarbonMonoxidePpm(scenario, at, z, model.FlueNode, ref reading);
                return true;
            case Measure.Feed when place == Places.Feed:
                reading.Value = scenario.Burn.FuelKgPerS * 3600;
                reading.By(Parameter.Feed, reading.Value);
                return true;
            case Measure.Flow:
                return ObserveFlow(place, ref reading);
            default:
                return false;
        }
    }

    private bool ObservePressure(string place, ref Reading reading)
    {
        if (place == Places.House)
        {
            reading.Value = scenario.HousePa;
            reading.By(Parameter.House, 1);
            return true;
        }

        var wanted = place == Places.SwitchHose ? model.SensePort : place;
        foreach (var port in model.Pattern.Ports)
        {
            if (port.Id == wanted)
            {
                Readings.Pressure(model, scenario, at, z, port, ref reading);
                return true;
            }
        }

        return false;
    }

    private bool ObserveTemperature(string place, ref Reading reading)
    {
        switch (place)
        {
            case Places.Room:
                reading.Value = scenario.RoomK - 273.15;
                return true;
            case Places.WarmAir:
                Readings.WarmAir(scenario, at, z, ref reading);
                return true;
            case Places.Collar or Places.Flue:
                Readings.Temperature(at, z, model.FlueNode, ref reading);
                return true;
            case Places.VentOutlet:
                for (var l = 0; l < at.Links; l++)
                {
                    if (scenario.Links[l].IsVent)
                    {
                        Readings.VentOutlet(scenario, at, z, l, ref reading);
                        return true;
                    }
                }

                return false;
            default:
                foreach (var port in model.Pattern.Ports)
                {
                    if (port.Id == place)
                    {
                        Readings.Temperature(at, z, model.NodeIndex(port.Node), ref reading);
                        return true;
                    }
                }

                return false;
        }
    }

    private bool ObserveFlow(string place, ref Reading reading)
    {
        if (place == Places.WarmAir)
        {
            if (scenario.StreamIsWater)
            {
                return false;
            }

            reading.Value = scenario.StreamWPerK / (1006 * Atmosphere.DensityKgPerM3(scenario.PressurePa, scenario.RoomK));
            reading.By(Parameter.RoomAir, reading.Value);
            reading.By(Parameter.Supply, reading.Value * scenario.MotorSlope);
            return true;
        }

        var any = false;
        var density = Atmosphere.DensityKgPerM3(scenario.PressurePa, scenario.BoundaryK(-2));
        for (var l = 0; l < at.Links; l++)
        {
            ref readonly var link = ref scenario.Links[l];
            if ((place == Places.Intake && link.IsIntake) || (place == Places.BurnPot && link.IsPotAir))
            {
                reading.Value = (any ? reading.Value : 0) + (z[at.Q(l)] / density);
                reading.By(at.Q(l), 1 / density);
                any = true;
            }
        }

        return any;
    }
}
