using Emberwright.Stove.Patterns;
using Emberwright.Stove.Vent;

namespace Emberwright.Stove.Air;

/// <summary>A stove at a site, compiled once: link tables, ports, day. Builds the scenario of any condition.</summary>
internal sealed class StoveModel
{
    /// <summary>ln of what an intake still passes when it is stopped up for a test (0.5 %).</summary>
    private static readonly double StoppedUp = Math.Log(0.005);

    private readonly Pattern pattern;
    private readonly Site site;
    private readonly FuelBasis fuel;
    private readonly LinkModel[] closed;
    private readonly LinkModel[] doorOpen;

    public StoveModel(Pattern pattern, StoveCard? card, Site site, double[] offsets)
    {
        this.pattern = pattern;
        this.site = site;
        PressurePa = Atmosphere.PressurePa(site.AltitudeM);
        OutdoorK = 273.15 + InputException.Require(site.OutdoorC ?? ReferenceDay.OutdoorC, -50, 50, "outdoor temperature", "°C", "Give the outdoor air's temperature.");
        RoomK = 273.15 + InputException.Require(site.RoomC ?? ReferenceDay.RoomC, -20, 45, "room temperature", "°C", "Give the room air's temperature.");
        var wind = InputException.Require(site.WindMPerS ?? 0, 0, 50, "wind", "m/s", "Give the wind speed at the terminal.");
        HousePa = InputException.Require(site.HousePa ?? 0, -100, 100, "house pressure", "Pa", "Give the house's pressure against outdoors; negative is a depressurised house.");
        Voltage = InputException.Require(site.SupplyV ?? pattern.SupplyV, 0.4 * pattern.SupplyV, 1.4 * pattern.SupplyV, "supply voltage", "V", "Measure at the socket; a stove for another mains needs its own card.") / pattern.SupplyV;
        Duct = VentDuct.Of(site.Vent ?? pattern.Vent);
        WindPa = Duct.WindCoefficient * 0.5 * Atmosphere.DensityKgPerM3(PressurePa, OutdoorK) * wind * wind;
        FullStreamWPerK = pattern.Heat.RoomAir is { } blower
            ? blower.Run(1).FlowM3PerS * HeatSide.AirHeatCapacity * Atmosphere.DensityKgPerM3(PressurePa, RoomK)
            : pattern.Heat.StreamWPerK;
        fuel = new FuelBasis(pattern.Fuel.Fuel);
        closed = [.. pattern.Air.Links.Select(l => Compile(l, open: false))];
        doorOpen = [.. pattern.Air.Links.Select(l => Compile(l, open: true))];
        Offsets = offsets;
        SensePort = card?.SensePort ?? pattern.Switch.SensePort;
        FlueNode = NodeIndex(pattern.Air.FlueNode);
        FireNode = NodeIndex(pattern.Air.FireNode);
    }

    public Pattern Pattern => pattern;

    public Site Site => site;

    public double PressurePa { get; }

    public double OutdoorK { get; }

    public double RoomK { get; }

    public double HousePa { get; }

    public double WindPa { get; }

    public double Voltage { get; }

    public VentDuct Duct { get; }

    /// <summary>What the card's healthy values add to each parameter's zero.</summary>
    public double[] Offsets { get; }

    public string SensePort { get; }

    public int FlueNode { get; }

    public int FireNode { get; }

    public int NodeIndex(string id)
    {
        for (var i = 0; i < pattern.Air.Nodes.Count; i++)
        {
            if (pattern.Air.Nodes[i].Id == id)
            {
                return i;
            }
        }

        throw new InputException("air path", $"node \"{id}\" of pattern {pattern.Id} is not known", "Correct the pattern's links and ports.");
    }

    public int LinkIndex(string id)
    {
        for (var l = 0; l < pattern.Air.Links.Count; l++)
        {
            if (pattern.Air.Links[l].Id == id)
            {
                return l;
            }
        }

        throw new InputException("air path", $"link \"{id}\" of pattern {pattern.Id} is not known", "Correct the pattern's ports.");
    }

    public UnknownLayout Layout(Scenario s) => new(closed.Length, pattern.Air.Nodes.Count, s.IsBurning, s.Regulation is not null);

    public Scenario Scenario(ReadOnlySpan<double> parameters, Condition condition)
    {
        Span<double> x = stackalloc double[parameters.Length];
        parameters.CopyTo(x);
        for (var k = 0; k < x.Length; k++)
        {
            x[k] += Offsets[k];
        }

        var level = Level(condition);
        var links = condition.Opening == OpeningState.DoorOpen ? doorOpen : closed;
        var factors = new double[links.Length];
        for (var l = 0; l < links.Length; l++)
        {
            ref readonly var link = ref links[l];
            var ln = link.Scale >= 0 ? x[link.Scale] : 0;
            if (link.IsIntake && condition.Opening == OpeningState.IntakeStopped)
            {
                ln += StoppedUp;
            }

            factors[l] = ln == 0 ? 1 : Math.Exp(-link.Exponent * ln);
        }

        var motor = MotorSlip.SpeedRatio(Voltage * Math.Exp(x[(int)Parameter.Supply]), out var motorSlope);
        var (speed, speedSlope) = BlowerSpeed(level.SpeedRatio, motor, motorSlope);
        return new Scenario
        {
            Links = links,
            LossFactor = factors,
            NodeCount = pattern.Air.Nodes.Count,
            FireNode = FireNode,
            PressurePa = PressurePa,
            OutdoorK = OutdoorK,
            RoomK = RoomK,
            OutsideAir = site.OutsideAir || pattern.IsSealed,
            WindPa = WindPa + x[(int)Parameter.Wind],
            HousePa = HousePa + x[(int)Parameter.House],
            VentSurroundingsK = Duct.IsIndoors ? (RoomK + OutdoorK) / 2 : OutdoorK,
            VentUaWPerK = Duct.ConductanceWPerK,
            Speed = condition.Blower == BlowerState.On ? speed * Math.Exp(x[(int)Parameter.BlowerSpeed]) : 0,
            BlowerSpeedByVoltage = speedSlope,
            MotorSlope = motorSlope,
            HeadFactor = Math.Exp(x[(int)Parameter.Wheel]),
            UaWPerK = pattern.Heat.ConductanceWPerK * Math.Exp(x[(int)Parameter.Insulation]),
            // With the room-air blower still, the body itself takes the heat at its own temperature: no stream to warm.
            StreamWPerK = FullStreamWPerK * level.StreamShare * Math.Exp(x[(int)Parameter.RoomAir])
                * (pattern.Heat.StreamIsWater ? 1 : motor),
            StreamIsWater = pattern.Heat.StreamIsWater,
            StreamInK = pattern.Heat.StreamIsWater && level.StreamShare > 0 ? 273.15 + pattern.Heat.ReturnC : RoomK,
            Regulation = Task(condition, x),
            Burn = new Burn(fuel, level.FeedKgPerH / 3600 * Math.Exp(x[(int)Parameter.Feed]),
                x[(int)Parameter.Moisture], pattern.Heat.RadiantShare),
        };
    }

    /// <summary>Heat capacity rate of the clean warm stream at full speed here, W/K: a blower moves volume, thin air holds less.</summary>
    private double FullStreamWPerK { get; }

    /// <summary>
    /// Speed ratio of the combustion blower and its slope d ln s / d ln voltage. A held speed follows the voltage only once the motor
    /// cannot reach it any more; it has 15 % in hand at full speed (from memory, no source).
    /// </summary>
    private (double Speed, double Slope) BlowerSpeed(double wanted, double motor, double motorSlope)
    {
        const double inHand = 1.15;
        return !pattern.HoldsBlowerSpeed ? (wanted * motor, motorSlope)
            : wanted <= inHand * motor ? (wanted, 0)
            : (inHand * motor, motorSlope);
    }

    private Regulation? Task(Condition condition, ReadOnlySpan<double> x)
    {
        if (pattern.Control is not { } control || condition.Blower == BlowerState.Off
            || !control.SetPointPa.TryGetValue(condition.Fire, out var setPointPa))
        {
            return null;
        }

        var port = pattern.Ports.First(p => p.Id == control.Port);
        return new Regulation(NodeIndex(port.Node), port.HeightM, setPointPa, Math.Exp(x[(int)Parameter.SensedPressure]),
            x[(int)Parameter.SensorZero], control.LeastSetting, control.MostSetting);
    }

    private BurnLevel Level(Condition condition) => pattern.Levels.TryGetValue(condition.Fire, out var level)
        ? level
        : throw new InputException("condition", $"pattern {pattern.Id} has no burn level \"{condition.Fire}\"", "Choose another state of the fire.");

    private LinkModel Compile(Link link, bool open)
    {
        var from = End(link.From);
        var to = End(link.To);
        var height = from >= 0 ? pattern.Air.Nodes[from].HeightM : to >= 0 ? pattern.Air.Nodes[to].HeightM : 0;
        var model = new LinkModel
        {
            Kind = LinkKind.Power,
            From = from,
            To = to,
            HeightM = height,
            RiseM = from >= 0 && to >= 0 ? pattern.Air.Nodes[to].HeightM - pattern.Air.Nodes[from].HeightM : 0,
            Scale = link.Scale is { } scale ? (int)scale : -1,
            Exponent = 2,
            IsIntake = link.IsIntake,
            IsPotAir = link.IsPotAir,
        };
        if (open && link.DoorOpenAreaM2 is { } area)
        {
            return LinkGeometry.Hole(model, area, 0.6) with { Scale = -1 };
        }

        return link switch
        {
            VentLink => model with
            {
                Kind = LinkKind.Passage,
                AreaM2 = Duct.AreaM2,
                DiameterM = Duct.DiameterM,
                LengthM = Duct.LengthM,
                RelativeRoughness = Duct.RoughnessM / Duct.DiameterM,
                Loss = Duct.Loss,
                RiseM = Duct.RiseM,
                ColdSide = ColdSide.VentSurroundings,
                IsVent = true,
            },
            _ => LinkGeometry.Of(link, model),
        };
    }

    private int End(string id) => id switch
    {
        Boundary.Room => -1,
        Boundary.AirSupply => -2,
        Boundary.Terminal => -3,
        _ => NodeIndex(id),
    };
}
