using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Tests.Air;

/// <summary>Short ways to a solved stove.</summary>
internal static class Stoves
{
    public static readonly int Parameters = Enum.GetValues<Parameter>().Length;

    public static VirtualStove Insert(Site? site = null) => new(DamperInsert.Pattern, null, site ?? new Site());

    public static double[] Values(params (Parameter Parameter, double Value)[] changes)
    {
        var values = new double[Parameters];
        foreach (var (parameter, value) in changes)
            values[(int)parameter] = value;
        return values;
    }

    public static StoveSolution Solve(this VirtualStove stove, Condition condition, params (Parameter, double)[] changes) =>
        stove.Solve(Values(changes), condition);

    public static double Pa(this StoveState state, string port) => state.Value(Measure.Pressure, port);

    public static double ExhaustC(this StoveState state) => state.Value(Measure.Temperature, Places.Collar);

    public static double Oxygen(this StoveState state) => state.Value(Measure.Oxygen, Places.Flue);

    /// <summary>ln of what a passage still passes when this share of it is closed.</summary>
    public static double Closed(double share) => Math.Log(1 - share);
}
