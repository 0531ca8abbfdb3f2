using System.Numerics;
using CsCheck;
using Emberwright.Stove.Controls;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>The solver on circuits whose answer is known by hand.</summary>
public class CircuitTests
{
    [Fact]
    public void An_ideal_120_V_source_drives_2500_mA_through_48_ohm()
    {
        var solution = new Circuit(["n", "l"], [new("source", 1, 0, 0, 120), new("igniter", 1, 0, 48)]).Solve();
        Assert.Equal(120, solution.VoltageV(1).Real, 1e-12);
        Assert.Equal(2.5, solution.CurrentA(1).Real, 1e-12);
        Assert.Equal(-2.5, solution.CurrentA(0).Real, 1e-12);
    }

    [Fact]
    public void A_balanced_bridge_has_no_voltage_across_it()
    {
        var solution = new Circuit(["n", "top", "left", "right"],
        [
            new("source", 1, 0, 1, 10), new("a", 1, 2, 100), new("b", 2, 0, 300), new("c", 1, 3, 10), new("d", 3, 0, 30),
            new("bridge", 2, 3, 5),
        ]).Solve();
        Assert.Equal(0, solution.CurrentA(5).Magnitude, 1e-12);
    }

    [Fact]
    public void Resistance_and_reactance_in_series_add_at_right_angles()
    {
        var solution = new Circuit(["n", "l"], [new("source", 1, 0, 0, 100), new("coil", 1, 0, new Complex(3, 4))]).Solve();
        Assert.Equal(20, solution.CurrentA(1).Magnitude, 1e-12);
    }

    [Fact]
    public void The_ghost_on_a_lead_100_pF_from_live_is_42_V_on_a_10_megohm_meter()
    {
        var reactance = -1 / (2 * Math.PI * 60 * 100e-12);
        var solution = new Circuit(["n", "l", "lead"],
            [new("source", 1, 0, 0, 120), new("lead", 2, 1, new Complex(0, reactance)), new("insulation", 2, 0, 1e15)]).Solve();
        Assert.Equal(120, solution.VoltageV(2).Magnitude, 1e-3);
        Assert.Equal(120 * 10 / Math.Sqrt(100 + 26.526 * 26.526), solution.LoadedVoltageV(2, 0, 10e6).Magnitude, 0.01);
    }

    [Fact]
    public void Held_back_voltage_scales_what_the_load_sees()
    {
        var solution = new Circuit(["n", "l", "load"],
            [new("source", 1, 0, 0, 120), new("output", 1, 2, 1e-6, 0, 0.25), new("motor", 2, 0, 100)]).Solve();
        Assert.Equal(90, solution.VoltageV(2).Real, 1e-5);
        Assert.Equal(0.9, solution.CurrentA(1).Real, 1e-7);
    }

    [Fact]
    public void A_missing_value_names_its_component() =>
        Assert.Contains("feed-motor", Assert.Throws<CircuitException>(() =>
            new Circuit(["n", "l"], [new("feed-motor", 1, 0, double.NaN)])).Message, StringComparison.Ordinal);

    [Fact]
    public void A_floating_test_point_is_named() =>
        Assert.Contains("tp3", Assert.Throws<CircuitException>(() =>
            new Circuit(["n", "l", "tp3"], [new("source", 1, 0, 1, 120)])).Message, StringComparison.Ordinal);

    [Fact]
    public void Two_ideal_sources_in_parallel_are_refused_with_the_remedy() =>
        Assert.Contains("internal resistance", Assert.Throws<CircuitException>(() =>
            new Circuit(["n", "l"], [new("a", 1, 0, 0, 120), new("b", 1, 0, 0, 110)]).Solve()).Message, StringComparison.Ordinal);

    [Fact]
    public void Series_resistances_divide_the_voltage_in_proportion() =>
        Gen.Double[0.01, 1e6].Array[2, 12].Sample(ohms =>
        {
            var nodes = Enumerable.Range(0, ohms.Length + 1).Select(i => $"n{i}").ToArray();
            var branches = ohms.Select((r, i) => new Branch($"r{i}", i + 1, i, r))
                .Append(new Branch("source", ohms.Length, 0, 0, 230)).ToArray();
            var solution = new Circuit(nodes, branches).Solve();
            var sum = 0.0;
            for (var i = 0; i < ohms.Length; i++)
            {
                sum += ohms[i];
                Assert.Equal(230 * sum / ohms.Sum(), solution.VoltageV(i + 1).Real, 1e-6);
            }
        });
}
