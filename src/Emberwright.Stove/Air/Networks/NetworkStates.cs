// In how many states can a network stand?
// Where a link climbs between places of different temperature its column is that of whichever end the air comes from, so the
// same pressures may drive air up it warm or down it cold. With the air of every such link held to that of one end the
// equations are monotone and have one solution; it is a state when every flow comes from the end that was held.
// All choices are tried (2^k solves for k such links), hence no state is missed, except those in which a link stands still
// between the two. Beyond the limits below only the four starts are tried.
// Assumes given temperatures: in a stove they follow the flow, and a fire may go out; see VirtualStove.
// Source: uniqueness at fixed densities: Todini & Pilati (1988), a gradient algorithm for the analysis of pipe networks;
// more than one state with buoyancy: Linden (1999), The fluid mechanics of natural ventilation, Annu. Rev. Fluid Mech. 31.
// Worked value: none published for this form; two shafts between a warm room and outdoors stand in two mirrored states.
namespace Emberwright.Stove.Air.Networks;

/// <summary>From where a state was sought.</summary>
public enum NetworkStart
{
    /// <summary>All flows from first to second end.</summary>
    Forward,
    /// <summary>All flows the other way.</summary>
    Backward,
    /// <summary>Every climbing link full of its colder end's air.</summary>
    Cold,
    /// <summary>Every climbing link full of its warmer end's air.</summary>
    Hot,
}

/// <summary>One state of a network and the starts that lead to it.</summary>
/// <param name="Solution">Pressures and flows.</param>
/// <param name="ReachedFrom">Starts from which the solver comes to it; empty when only the search over directions finds it.</param>
public sealed record NetworkState(NetworkSolution Solution, IReadOnlyList<NetworkStart> ReachedFrom);

/// <summary>All states found of a network.</summary>
/// <param name="States">The one from <see cref="NetworkStart.Forward"/> first.</param>
/// <param name="EitherWay">Ids of links that climb between places of different temperature.</param>
/// <param name="IsComplete">True when every choice of directions was tried.</param>
public sealed record NetworkStates(IReadOnlyList<NetworkState> States, IReadOnlyList<string> EitherWay, bool IsComplete)
{
    /// <summary>Most climbing links of which every choice of directions is tried.</summary>
    public const int MostChoices = 8;

    /// <summary>Most free nodes for that.</summary>
    public const int MostNodes = 60;

    private const double LeastColumnPa = 0.01;
    private const double SameKgPerS = 1e-5;
    private const double SamePa = 0.01;

    /// <summary>Seeks all states.</summary>
    /// <exception cref="InputException">The network makes no sense; the message names what.</exception>
    public static NetworkStates Of(AirNetwork network)
    {
        var model = new NetworkModel(network);
        var s = model.Scenario;
        var climbing = Enumerable.Range(0, s.Links.Length).Where(l => ColumnPa(model, l) > LeastColumnPa).ToArray();
        var found = new List<(NetworkSolution Solution, List<NetworkStart> From)>();
        foreach (var start in Enum.GetValues<NetworkStart>())
        {
            Add(found, model.Solution(model.Run(s, model.Start(l => Direction(model, start, l)))), start);
        }

        var complete = climbing.Length <= MostChoices && s.NodeCount <= MostNodes;
        for (var choice = 0; complete && climbing.Length > 0 && choice < 1 << climbing.Length; choice++)
        {
            if (Held(model, climbing, choice) is { } state)
            {
                Add(found, state, null);
            }
        }

        var standing = found.Where(f => f.Solution.Converged).ToList();
        return new NetworkStates(
            [.. (standing.Count > 0 ? standing : found).Select(f => new NetworkState(f.Solution, f.From))],
            [.. climbing.Select(l => network.Links[l].Id)], complete);
    }

    /// <summary>The state whose climbing links carry air in the chosen directions; null when there is none.</summary>
    private static NetworkSolution? Held(NetworkModel model, int[] climbing, int choice)
    {
        var links = (LinkModel[])model.Scenario.Links.Clone();
        bool Forward(int k) => (choice >> k & 1) == 0;
        for (var k = 0; k < climbing.Length; k++)
        {
            var l = climbing[k];
            links[l] = links[l] with { HeldK = model.EndK(Forward(k) ? links[l].From : links[l].To) };
        }

        var run = model.Run(model.Scenario with { Links = links }, model.Start(_ => 1));
        for (var k = 0; k < climbing.Length; k++)
        {
            var q = run.Unknowns[climbing[k]];
            if (!run.Converged || (Forward(k) ? q : -q) < SmoothPower.EpsilonKgPerS)
            {
                return null;
            }
        }

        var settled = model.Run(model.Scenario, run.Unknowns);
        return settled.Converged ? model.Solution(settled) : null;
    }

    private static void Add(List<(NetworkSolution Solution, List<NetworkStart> From)> found, NetworkSolution solution, NetworkStart? start)
    {
        var at = solution.Converged ? found.FindIndex(f => f.Solution.Converged && Same(f.Solution, solution)) : found.Count == 0 ? -1 : 0;
        if (at < 0)
        {
            found.Add((solution, []));
            at = found.Count - 1;
        }

        if (start is { } from && solution.Converged == found[at].Solution.Converged)
        {
            found[at].From.Add(from);
        }
    }

    private static bool Same(NetworkSolution a, NetworkSolution b) =>
        a.Links.Zip(b.Links).All(p => Math.Abs(p.First.MassFlowKgPerS - p.Second.MassFlowKgPerS) < SameKgPerS)
        && a.Nodes.Zip(b.Nodes).All(p => Math.Abs(p.First.PressurePa - p.Second.PressurePa) < SamePa);

    private static int Direction(NetworkModel model, NetworkStart start, int l)
    {
        ref readonly var link = ref model.Scenario.Links[l];
        var fromIsWarmer = model.EndK(link.From) > model.EndK(link.To);
        return start switch
        {
            NetworkStart.Forward => 1,
            NetworkStart.Backward => -1,
            NetworkStart.Cold => fromIsWarmer ? -1 : 1,
            NetworkStart.Hot => fromIsWarmer ? 1 : -1,
        };
    }

    private static double ColumnPa(NetworkModel model, int l)
    {
        ref readonly var link = ref model.Scenario.Links[l];
        var s = model.Scenario;
        return Math.Abs((Atmosphere.DensityKgPerM3(s.PressurePa, model.EndK(link.From)) - Atmosphere.DensityKgPerM3(s.PressurePa, model.EndK(link.To)))
            * Atmosphere.GravityMPerS2 * link.RiseM);
    }
}
