// What speed does a controller set that holds a pressure?
//   (p_node − p_room(z))·k + z₀ = p_set,   u_least ≤ u ≤ u_most
// p_node pressure at the sensor's port, Pa; k share of it that reaches the sensor, –; z₀ the sensor's zero error, Pa;
// p_set set point, Pa; u the controller's setting, the unknown: blower speed = u · (speed its motor makes of a setting of 1).
// At a limit the setting stays there and the pressure is what it comes to.
// Assumes a settled controller with integral action. Source: common practice, no source.
namespace Emberwright.Stove.Air;

/// <summary>A controller's task in one solve.</summary>
/// <param name="Node">Node its sensor's port is at.</param>
/// <param name="HeightM">Height of the tapping, m.</param>
/// <param name="SetPointPa">Pressure to hold, Pa.</param>
/// <param name="Reaching">Share of the port's pressure that reaches the sensor, –.</param>
/// <param name="ZeroPa">The sensor's zero error, Pa.</param>
/// <param name="Least">Lowest setting.</param>
/// <param name="Most">Highest setting.</param>
internal sealed record Regulation(int Node, double HeightM, double SetPointPa, double Reaching, double ZeroPa, double Least, double Most)
{
    /// <summary>Pressure the sensor shows, Pa.</summary>
    public double SensedPa(Scenario s, double nodePa) => ((nodePa - s.RoomPa(HeightM)) * Reaching) + ZeroPa;
}
