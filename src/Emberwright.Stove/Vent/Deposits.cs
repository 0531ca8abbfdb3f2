using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Vent;

/// <summary>One passage of a stove with a layer on its walls.</summary>
/// <param name="Passage">Its link in the air path.</param>
/// <param name="Deposit">What the layer leaves.</param>
public sealed record FurredPassage(string Passage, Deposit Deposit);

/// <summary>What layers of usual thicknesses leave of a stove's gas passages and vent.</summary>
public static class Deposits
{
    /// <summary>Layers one meets, m.</summary>
    public static IReadOnlyList<double> UsualM { get; } = [0.001, 0.002, 0.005, 0.010];

    /// <summary>Every gas passage, then the vent, each with each layer, at the flow and temperatures of a solved stove.</summary>
    /// <param name="state">The stove burning on its vent.</param>
    public static IReadOnlyList<FurredPassage> Of(StoveSolution state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return
        [
            .. from passage in Passages(state)
               from thickness in UsualM
               select new FurredPassage(passage.Id, Deposit.In(
                   passage, thickness, Math.Max(Math.Abs(state.MassFlowKgPerS(passage.Id)), 1e-5), 273.15 + state.TemperatureC(passage.From))),
        ];
    }

    private static IEnumerable<Passage> Passages(StoveSolution state)
    {
        foreach (var link in state.Links)
        {
            switch (link)
            {
                case Passage { IsIntake: false } passage:
                    yield return passage;
                    break;
                case VentLink vent:
                    var duct = state.Model.Duct;
                    yield return new Passage(vent.Id, vent.From, vent.To, duct.AreaM2, duct.DiameterM, duct.LengthM, duct.RoughnessM, duct.Loss, vent.Origin);
                    break;
            }
        }
    }
}
