using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using System.Text;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>Runs the circuit simulator ngspice on a netlist and reads back every node voltage and source current.</summary>
internal static class Ngspice
{
    /// <summary>
    /// Values by lower-case name: <c>v(node)</c> or <c>i(source)</c>. The circuits go in one by one, since one large one
    /// takes far longer than many small ones; their names must differ.
    /// </summary>
    internal static Dictionary<string, Complex> Run(IReadOnlyList<string> circuits, string analysis)
    {
        var folder = Directory.CreateTempSubdirectory("oracle");
        try
        {
            var raw = Path.Combine(folder.FullName, "out.raw");
            var script = new StringBuilder("oracle\nR1 n1 0 1\n.control\nset filetype=ascii\nset appendwrite\n");
            for (var i = 0; i < circuits.Count; i++)
            {
                var file = Path.Combine(folder.FullName, $"{i}.cir");
                File.WriteAllText(file, $"oracle\n{circuits[i]}.end\n");
                script.Append($"source {file}\n{analysis}\nwrite {raw}\nremcirc\n");
            }
            var netlist = Path.Combine(folder.FullName, "all.cir");
            File.WriteAllText(netlist, script.Append("quit\n.endc\n.end\n").ToString());
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
        var result = new Dictionary<string, Complex>(StringComparer.Ordinal);
        var names = new List<string>();
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i] == "Variables:")
            {
                names.Clear();
                while (lines[i + 1] != "Values:") names.Add(lines[++i].Split('\t', StringSplitOptions.RemoveEmptyEntries)[1]);
            }
            else if (lines[i] == "Values:")
            {
                foreach (var name in names)
                {
                    var text = lines[++i].Split('\t', StringSplitOptions.RemoveEmptyEntries)[^1].Split(',');
                    result[name] = new Complex(Number(text[0]), text.Length > 1 ? Number(text[1]) : 0);
                }
            }
        }
        return result;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
