using System.Collections.Immutable;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;
using MeterReading = Emberwright.Reports.Pictures.Wiring.MeterReading;

namespace Emberwright.Reports.FromWiring;

/// <summary>The meter at the foot of the picture: what it shows between two points of a path, and what another value would mean.</summary>
/// <param name="path">The path.</param>
/// <param name="operation">What the controls are doing.</param>
/// <param name="supposed">Components supposed at fault.</param>
internal sealed class LeadWords(LoadPath path, Operation operation, ImmutableArray<CircuitChange> supposed)
{
    private const double Sure = 0.2;

    /// <summary>The meter with its leads on two points.</summary>
    public MeterReading Of(string a, string b)
    {
        var mains = path.Circuit == SupplyCircuit.Mains;
        var (function, setting) = operation == Operation.Unplugged ? (MeterFunction.Ohms, "ohms")
            : path.Load is Thermocouple ? (MeterFunction.DcMillivolts, "millivolts DC")
            : mains ? (MeterFunction.AcVolts, "volts AC") : (MeterFunction.DcVolts, "volts DC");
        var state = path.Wiring.In(operation);
        var shown = Stove.Controls.Meter.Ordinary.Between(path.Wiring, state, supposed.AsSpan(), function, a, b);
        var sound = Stove.Controls.Meter.Ordinary.Between(path.Wiring, state, [], function, a, b);
        return new MeterReading(a, b, supposed.IsEmpty ? null : Number(Scale * shown.Value), setting, Number(Scale * sound.Value), Meaning(a, b, sound.Value), mains || operation == Operation.Unplugged);
    }

    private double Scale => path.Load is Thermocouple && operation != Operation.Unplugged ? 1000 : 1;

    private string Meaning(string a, string b, double sound)
    {
        string[] points = [.. path.Points];
        var (i, j) = (Array.IndexOf(points, a), Array.IndexOf(points, b));
        var between = path.Parts[Math.Min(i, j)..Math.Max(i, j)];
        if (operation == Operation.Unplugged) return "The rest of the circuit lies beside these points: to judge a part alone, take its lead off first.";
        if (path.Load is Thermocouple) return "8 mV and more prove a fire. Nothing with a lively flame: broken. Below nought: its leads are changed over.";
        if (!between.Any(OpenParts.IsLoad))
            return Math.Abs(sound) > Sure * path.SupplyV
                ? "Nothing is called, so the output holds the voltage back. It means something only while the board calls."
                : $"{Supply} would mean that something between the leads is open. Zero clears it only while the board calls.";
        return Math.Abs(sound) > Sure * path.SupplyV
            ? $"{Supply} with the {path.Load.Name.ToLowerInvariant()} still points at it. Zero points at something above."
            : $"Nothing is called, so nothing should stand here. {Supply} would mean an output stuck on.";
    }

    private string Supply => $"{QuantityFormat.Number(path.SupplyV, 1)} V";

    private static string Number(double value) => double.IsPositiveInfinity(value) ? "open" : QuantityFormat.Number(value, value < 20 ? 0.1 : 1);
}
