using CsCheck;
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Vent;
using Xunit;

namespace Emberwright.Stove.Tests.Air;

/// <summary>A layer's thickness becomes cross-section, hydraulic diameter and conductance by geometry worked out here by hand.</summary>
public class DepositTests
{
    private static Passage Slot(int count, double aspect, double areaM2) => Passage.Chamber("p", "a", "b", areaM2, 1, Origin.Memory) with { Shape = new PassageShape(count, aspect) };

    /// <summary>76 mm pipe, 5 mm all round: 66 mm, (66/76)² = 0.7542.</summary>
    [Fact]
    public void Round_pipe()
    {
        var pipe = new Passage("vent", "a", "b", Math.PI * 0.076 * 0.076 / 4, 0.076, 5.8, 0.003, 4, Origin.Memory);
        var layer = Deposit.In(pipe, 0.005, 0.007, 420);

        Assert.Equal(0.066, layer.HydraulicDiameterM, 1e-9);
        Assert.Equal(0.7542, layer.AreaShare, 1e-4);
        Assert.True(layer.ConductanceShare < layer.AreaShare);
    }

    /// <summary>Two slots 20 × 30 mm, 2 mm all round: 16 × 26 each, 832 mm² of 1200, D_h = 2·16·26/42 = 19.810 mm; ζ alone: conductance as area.</summary>
    [Fact]
    public void Two_slots()
    {
        var layer = Deposit.In(Slot(2, 1.5, 1.2e-3), 0.002, 0.006, 450);

        Assert.Equal(832e-6, layer.AreaM2, 1e-9);
        Assert.Equal(0.019810, layer.HydraulicDiameterM, 1e-6);
        Assert.Equal(832.0 / 1200, layer.ConductanceShare, 1e-9);
        Assert.Equal(1 - (832.0 / 1200), layer.Restriction, 1e-9);
    }

    /// <summary>Conductance by friction, from Colebrook's formula iterated here: (A/A_c)·√(Σζ_c/Σζ).</summary>
    [Fact]
    public void Friction_of_the_rougher_narrower_pipe()
    {
        var pipe = new Passage("vent", "a", "b", Math.PI * 0.1 * 0.1 / 4, 0.1, 6, 0.0005, 3, Origin.Memory);
        const double flow = 0.02, kelvin = 400;
        var viscosity = 1.716e-5 * Math.Pow(kelvin / 273.15, 1.5) * (273.15 + 110.4) / (kelvin + 110.4);
        double Zeta(double d, double rough)
        {
            var re = 4 * flow / (Math.PI * d * viscosity);
            var x = 7.0;
            for (var i = 0; i < 40; i++) x = -2 * Math.Log10((rough / d / 3.7) + (2.51 * x / re));
            return 3 + (6 / (d * x * x));
        }

        var expected = 0.8 * 0.8 * Math.Sqrt(Zeta(0.1, 0.0005) / Zeta(0.08, 0.01 / 3));
        Assert.Equal(expected, Deposit.In(pipe, 0.01, flow, kelvin).ConductanceShare, 1e-6);
    }

    [Fact]
    public void A_thicker_layer_leaves_less() => Gen.Select(Gen.Double[0, 0.02], Gen.Double[1e-4, 0.01], Gen.Double[1, 8]).Sample((t, more, aspect) =>
        Deposit.In(Slot(1, aspect, 2e-3), t + more, 0.006, 450).ConductanceShare <= Deposit.In(Slot(1, aspect, 2e-3), t, 0.006, 450).ConductanceShare);

    [Fact]
    public void Every_gas_passage_and_the_vent_are_listed()
    {
        var state = new VirtualStove(Underfed.Pattern, null, new Site()).Solve(new double[Enum.GetValues<Parameter>().Length], Condition.HighBurn);
        var listed = Deposits.Of(state);

        Assert.Equal(["exchanger", "ash-passages", "vent"], listed.Select(f => f.Passage).Distinct());
        Assert.All(listed, f => Assert.InRange(f.Deposit.Restriction, 0, 1));
    }
}
