using Emberwright.Stove.Fire;

namespace Emberwright.Stove.Patterns;

/// <summary>Softwood pellets as the patterns take them.</summary>
internal static class PelletFuel
{
    /// <summary>Dry C 50.50 H 6.10 O 42.89 N 0.10 S 0.01 ash 0.40 %, 7 % moisture; LHV 17.538 MJ/kg as fired.</summary>
    public static FuelSide Softwood { get; } = new(
        new Fuel("softwood pellets", UltimateAnalysis.OfPercent(50.50, 6.10, 42.89, 0.10, 0.01, 0.40), 0.07),
        17.538e6,
        new Origin(OriginKind.Pattern, "typical softwood pellets within ISO 17225-2 class A1; analysis from memory, no source"));
}
