using System.Diagnostics;
using System.Globalization;

namespace Emberwright.Trials.Speed;

/// <summary>
/// Time this thread has had a core for, so that other work on the machine does not count; wall-clock time where the system does
/// not tell.
/// </summary>
internal static class OwnTime
{
    private const string Told = "/proc/thread-self/schedstat";

    /// <summary>Milliseconds so far.</summary>
    public static double Ms => File.Exists(Told)
        ? long.Parse(File.ReadAllText(Told).Split(' ')[0], CultureInfo.InvariantCulture) / 1e6
        : Stopwatch.GetTimestamp() * 1e3 / Stopwatch.Frequency;
}
