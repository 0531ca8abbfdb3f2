using Emberwright.Stove.Air.Networks;
using Emberwright.Visits;

namespace Emberwright.Cli.Json;

internal record JsonAirState
{
    public required IReadOnlyList<string> ReachedFrom { get; init; }
    public required string Status { get; init; }
    public required int Iterations { get; init; }
    public required double MassResidualKgPerS { get; init; }
    public required double PressureResidualPa { get; init; }
    public required string Worst { get; init; }
    public required IReadOnlyList<JsonAirNode> Nodes { get; init; }
    public required IReadOnlyList<JsonAirLink> Links { get; init; }

    public static JsonAirState Of(NetworkState state, Func<NetworkStart, string> start) => new()
    {
        ReachedFrom = [.. state.ReachedFrom.Select(start)],
        Status = state.Solution.Converged ? "converged" : "not-converged",
        Iterations = state.Solution.Iterations,
        MassResidualKgPerS = state.Solution.MassResidualKgPerS,
        PressureResidualPa = state.Solution.PressureResidualPa,
        Worst = state.Solution.Worst,
        Nodes = [.. state.Solution.Nodes.Select(n => new JsonAirNode(n.Node.Id, n.PressurePa, n.Node.TemperatureC, n.Node.PressurePa is not null))],
        Links = [.. state.Solution.Links.Select(l => new JsonAirLink(l.Link.Id, l.Link.From, l.Link.To, l.MassFlowKgPerS, l.VolumeFlowM3PerS, l.LossPa, l.StackPa))],
    };
}

internal sealed record AirDocument : JsonAirState
{
    public required string Name { get; init; }
    public required string Engine { get; init; }
    public required IReadOnlyList<string> EitherWay { get; init; }
    public required bool AllDirectionsTried { get; init; }
    public required IReadOnlyList<JsonAirState> OtherStates { get; init; }

    public static AirDocument Of(AirNetwork network, NetworkStates found, Func<NetworkStart, string> start)
    {
        var first = JsonAirState.Of(found.States[0], start);
        return new AirDocument
        {
            Name = network.Name,
            Engine = Visits.Engine.Version,
            ReachedFrom = first.ReachedFrom,
            Status = first.Status,
            Iterations = first.Iterations,
            MassResidualKgPerS = first.MassResidualKgPerS,
            PressureResidualPa = first.PressureResidualPa,
            Worst = first.Worst,
            Nodes = first.Nodes,
            Links = first.Links,
            EitherWay = found.EitherWay,
            AllDirectionsTried = found.IsComplete,
            OtherStates = [.. found.States.Skip(1).Select(s => JsonAirState.Of(s, start))],
        };
    }
}

internal sealed record JsonAirNode(string Id, double PressurePa, double TemperatureC, bool Given);

internal sealed record JsonAirLink(
    string Id, string From, string To, double MassFlowKgPerS, double VolumeFlowM3PerS, double LossPa, double StackPa);
