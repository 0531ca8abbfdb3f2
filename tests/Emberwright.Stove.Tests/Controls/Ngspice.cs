using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>Runs the circuit simulator ngspice on a netlist and reads back every node voltage and source current.</summary>
internal static class Ngspice
{
    /// <summary>Values by lower-case name: <c>v(node)</c> or <c>i(source)</c>.</summary>
    internal static Dictionary<string, Complex> Run(string elements, string analysis)
    {
        var folder = Directory.CreateTempSubdirectory("oracle");
        try
        {
            var raw = Path.Combine(folder.FullName, "out.raw");
            var netlist = Path.Combine(folder.FullName, "in.cir");
            File.WriteAllText(netlist,
                $"oracle\n{elements}\n.control\nset filetype=ascii\n{analysis}\nwrite {raw}\nquit\n.endc\n.end\n");
            var output = Execute(netlist);
            Assert.True(File.Exists(raw), $"ngspice wrote no result:\n{output}");
            return Parse(File.ReadAllLines(raw));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Execute(string netlist)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo("ngspice", ["-b", netlist])
            { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return output + error.Result;
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException(
                "ngspice is not installed, so the circuit solver cannot be checked. Run ./check, or install the package ngspice.", missing);
        }
    }

    private static Dictionary<string, Complex> Parse(string[] lines)
    {
        var complex = lines.Single(l => l.StartsWith("Flags:", StringComparison.Ordinal)).Contains("complex", StringComparison.Ordinal);
        var variables = Array.IndexOf(lines, "Variables:");
        var values = Array.IndexOf(lines, "Values:");
        var names = lines[(variables + 1)..values].Select(l => l.Split('\t', StringSplitOptions.RemoveEmptyEntries)[1]).ToArray();
        var result = new Dictionary<string, Complex>(StringComparer.Ordinal);
        for (var i = 0; i < names.Length; i++)
        {
            var text = lines[values + 1 + i].Split('\t', StringSplitOptions.RemoveEmptyEntries)[^1].Split(',');
            result[names[i]] = new Complex(Number(text[0]), complex ? Number(text[1]) : 0);
        }
        return result;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
