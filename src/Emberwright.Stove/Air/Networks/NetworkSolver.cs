// What pressures and flows has a network of openings, cracks, passages and blowers at given temperatures?
// For each link        p_from − p_to + (ρ_out − ρ)·g·Δz − loss(q) = 0        Pa
// for each free node   Σ q_in − Σ q_out = 0                                  kg/s
// p total pressure against still outdoor air at the same height, Pa; q mass flow, kg/s; ρ density of the air in the link,
// that of the node it comes from, kg/m³; ρ_out outdoors; Δz height gained, m. Losses: see LinkModel, the same as a stove's.
// Solved by the flow step of the stove's solver, repeated at fixed temperatures until mass and pressure residuals are met.
// Valid for small pressures against ambient. Where a link climbs between places of different temperature its column
// depends on the direction of flow, and a network may then have more than one state: see NetworkStates.
// Source: Todini & Pilati (1988), A gradient algorithm for the analysis of pipe networks.
// Worked value: one opening 0.01 m², C_d 0.6, 20 °C, 10 Pa → 0.0294 kg/s (Modelica Buildings OneWayFlow table).
namespace Emberwright.Stove.Air.Networks;

/// <summary>Solves a network from one start.</summary>
public static class NetworkSolver
{
    /// <summary>Pressures and flows, found from all flows forward.</summary>
    /// <exception cref="InputException">The network makes no sense; the message names what.</exception>
    public static NetworkSolution Solve(AirNetwork network)
    {
        var model = new NetworkModel(network);
        return model.Solution(model.Run(model.Scenario, model.Start(_ => 1)));
    }
}
