namespace Emberwright.Stove.Air.Networks;

/// <summary>How far a network's flows and pressures have come.</summary>
internal readonly record struct NetworkRun(double[] Unknowns, LinkPoint[] Points, int Steps, double MassKgPerS, double PressurePa, int Worst)
{
    public bool Converged => MassKgPerS < CoupledSolver.MassTolerance && PressurePa < CoupledSolver.PressureTolerance;
}

/// <summary>A network reduced to what the flow step needs, and the step repeated until nothing misses.</summary>
internal sealed class NetworkModel
{
    private const int FullSteps = 60;
    private const int MostSteps = 600;
    private const double ShortStep = 0.7;
    private const double StartKgPerS = 1e-3;

    private readonly AirNetwork network;
    private readonly List<NetworkNode> free;
    private readonly UnknownLayout at;

    public NetworkModel(AirNetwork network)
    {
        ArgumentNullException.ThrowIfNull(network);
        if (network.Adrift() is [var adrift, ..])
        {
            throw new InputException(adrift.Id, "no link leads from it to a given pressure", "Link it, or give it a pressure.");
        }

        this.network = network;
        free = [.. network.Nodes.Where(n => n.PressurePa is null)];
        Scenario = Compile(network, free);
        at = new UnknownLayout(network.Links.Count, free.Count, HasShares: false, IsControlled: false);
    }

    public Scenario Scenario { get; }

    /// <summary>A start with every link's flow in the direction given: 1 forward, −1 backward.</summary>
    public double[] Start(Func<int, int> direction)
    {
        var z = new double[at.Count];
        for (var l = 0; l < at.Links; l++)
        {
            z[at.Q(l)] = direction(l) * StartKgPerS;
        }

        for (var i = 0; i < free.Count; i++)
        {
            z[at.T(i)] = 273.15 + free[i].TemperatureC;
        }

        return z;
    }

    /// <summary>Repeats the flow step from a start, which is changed.</summary>
    public NetworkRun Run(Scenario scenario, double[] z)
    {
        var points = new LinkPoint[at.Links];
        var steps = 0;
        var (mass, pressure, worst) = Miss(scenario, at, z, points);
        while (steps < MostSteps && !(mass < CoupledSolver.MassTolerance && pressure < CoupledSolver.PressureTolerance))
        {
            FlowStep.Take(scenario, at, z, points, steps < FullSteps ? 1 : ShortStep);
            steps++;
            (mass, pressure, worst) = Miss(scenario, at, z, points);
        }

        return new NetworkRun(z, points, steps, mass, pressure, worst);
    }

    public NetworkSolution Solution(NetworkRun run) => new(
        [.. network.Nodes.Select(n => new NodeState(n, n.PressurePa ?? run.Unknowns[at.P(free.IndexOf(n))]))],
        [.. network.Links.Select((l, k) => State(Scenario, l, k, run.Unknowns[at.Q(k)], run.Points[k]))],
        run.Converged, run.Steps, run.MassKgPerS, run.PressurePa,
        run.Worst < at.Links ? network.Links[run.Worst].Id : free[run.Worst - at.Links].Id);

    /// <summary>Temperature of the air at a link's end, K.</summary>
    public double EndK(int end) => end >= 0 ? 273.15 + free[end].TemperatureC : Scenario.BoundaryK(end);

    private static LinkState State(Scenario s, Link link, int index, double q, in LinkPoint point)
    {
        var stack = (s.OutdoorDensity - point.Density) * Atmosphere.GravityMPerS2 * s.Links[index].RiseM;
        return new LinkState(link, q, q / point.Density, point.Loss, stack);
    }

    /// <summary>Evaluates every link at the present flows; the largest residuals and the row of the worst.</summary>
    private static (double Mass, double Pressure, int Worst) Miss(Scenario s, in UnknownLayout at, double[] z, LinkPoint[] points)
    {
        var balance = new double[at.Nodes];
        double pressure = 0, worst = -1;
        var row = 0;
        for (var l = 0; l < at.Links; l++)
        {
            ref readonly var link = ref s.Links[l];
            var q = z[at.Q(l)];
            points[l].Evaluate(link, s.Duty(l, 1), q, Kelvin(s, at, z, link.From), Kelvin(s, at, z, link.To));
            var miss = Math.Abs(Pascal(s, at, z, link.From) - Pascal(s, at, z, link.To) - points[l].Loss
                + ((s.OutdoorDensity - points[l].Density) * Atmosphere.GravityMPerS2 * link.RiseM));
            pressure = Math.Max(pressure, miss);
            Worse(miss / CoupledSolver.PressureTolerance, l);
            if (link.From >= 0)
            {
                balance[link.From] -= q;
            }

            if (link.To >= 0)
            {
                balance[link.To] += q;
            }
        }

        double mass = 0;
        for (var i = 0; i < at.Nodes; i++)
        {
            mass = Math.Max(mass, Math.Abs(balance[i]));
            Worse(Math.Abs(balance[i]) / CoupledSolver.MassTolerance, at.Links + i);
        }

        return (mass, pressure, row);

        void Worse(double scaled, int index)
        {
            if (scaled > worst)
            {
                (worst, row) = (scaled, index);
            }
        }
    }

    private static double Kelvin(Scenario s, in UnknownLayout at, double[] z, int end) => end >= 0 ? z[at.T(end)] : s.BoundaryK(end);

    private static double Pascal(Scenario s, in UnknownLayout at, double[] z, int end) => end >= 0 ? z[at.P(end)] : s.BoundaryPa(end, 0);

    private static Scenario Compile(AirNetwork network, List<NetworkNode> free)
    {
        var given = network.Nodes.Where(n => n.PressurePa is not null).ToList();
        var outdoorK = 273.15 + network.OutdoorC;
        return new Scenario
        {
            Links = [.. network.Links.Select(Model)],
            LossFactor = [.. network.Links.Select(_ => 1.0)],
            Given = [.. given.Select(n => new GivenState(n.PressurePa!.Value, 273.15 + n.TemperatureC))],
            NodeCount = free.Count,
            FireNode = -1,
            PressurePa = network.AmbientPa,
            OutdoorK = outdoorK,
            RoomK = outdoorK,
            OutsideAir = true,
            WindPa = 0,
            HousePa = 0,
            VentSurroundingsK = outdoorK,
            VentUaWPerK = 0,
            Speed = 1,
            BlowerSpeedByVoltage = 0,
            MotorSlope = 0,
            HeadFactor = 1,
            UaWPerK = 0,
            StreamWPerK = 0,
            StreamInK = outdoorK,
            StreamIsWater = false,
            Burn = Burn.None,
        };

        LinkModel Model(Link link)
        {
            var (from, to) = (Find(link.From, link), Find(link.To, link));
            return LinkGeometry.Of(link, new LinkModel { Kind = LinkKind.Power, From = End(from), To = End(to), RiseM = to.HeightM - from.HeightM, Scale = -1 });
        }

        NetworkNode Find(string id, Link link) => network.Nodes.FirstOrDefault(n => n.Id == id)
            ?? throw new InputException(link.Id, $"it ends at \"{id}\", which is not a node", "Name one of the network's nodes.");

        int End(NetworkNode node) => node.PressurePa is null ? free.IndexOf(node) : Scenario.FirstGiven - given.IndexOf(node);
    }
}
