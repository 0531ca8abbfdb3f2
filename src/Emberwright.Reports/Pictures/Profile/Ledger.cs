using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Profile;

/// <summary>The change across one part, or across several where a port between them was not read.</summary>
/// <param name="First">First part it spans.</param>
/// <param name="Last">Last part it spans.</param>
/// <param name="Name">The parts' names.</param>
/// <param name="Found">Change in the shown unit, already rounded; null when nothing was read at all.</param>
/// <param name="Healthy">Change of a healthy stove, rounded alike.</param>
internal sealed record LedgerEntry(int First, int Last, string Name, double? Found, double Healthy);

/// <summary>
/// The changes along the way of the air, found and healthy. Differences are taken between rounded pressures,
/// so each row sums to outdoors minus room exactly and a reader can check it by hand. The odd entry is the one
/// that differs most from healthy, by more than its two ports' bands allow.
/// </summary>
/// <param name="Entries">From room to outdoors.</param>
/// <param name="Healthy">The healthy change of each single part.</param>
/// <param name="Odd">Index of the odd entry, or null when none stands out.</param>
internal sealed record Ledger(ImmutableArray<LedgerEntry> Entries, ImmutableArray<double> Healthy, int? Odd)
{
    public static Ledger From(ProfileInput input)
    {
        var n = input.Stations.Length;
        double Healthy(int port) => port < 0 ? 0 : input.Unit.Round(port < n ? input.Stations[port].Healthy.MidPa : input.Outdoors.MidPa);
        double? Read(int port) => port < 0 ? 0 : port == n ? Healthy(n) : input.Stations[port].ReadingPa is { } p ? input.Unit.Round(p) : null;
        double HalfWidth(int port) => port < 0 ? 0 : port == n
            ? (input.Outdoors.HighPa - input.Outdoors.LowPa) / 2
            : (input.Stations[port].Healthy.HighPa - input.Stations[port].Healthy.LowPa) / 2;

        var any = input.Stations.Any(s => s.ReadingPa is not null);
        var entries = ImmutableArray.CreateBuilder<LedgerEntry>();
        var from = -1;
        (int Index, double Error)? odd = null;
        for (var port = 0; port <= n; port++)
        {
            if (any && Read(port) is null) continue;
            var name = string.Join(Say.Of("profile.and"), input.Parts[(from + 1)..(port + 1)]);
            double? found = any ? Read(port) - Read(from) : null;
            var healthy = Healthy(port) - Healthy(from);
            var error = Math.Abs(found - healthy ?? 0) * input.Unit.PaPerUnit;
            var allowed = Math.Sqrt(Math.Pow(HalfWidth(port), 2) + Math.Pow(HalfWidth(from), 2));
            if (error > allowed && error > (odd?.Error ?? 0)) odd = (entries.Count, error);
            entries.Add(new(from + 1, port, name, found, healthy));
            from = port;
        }

        return new(entries.ToImmutable(), [.. Enumerable.Range(0, n + 1).Select(p => Healthy(p) - Healthy(p - 1))], odd?.Index);
    }
}
