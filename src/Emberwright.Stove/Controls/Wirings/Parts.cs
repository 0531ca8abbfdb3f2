using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>Parts that several wirings share, without ends. All values are common practice, no source.</summary>
internal static class Parts
{
    private const string Loose = "";

    internal static Interlock HighLimit(ResetKind reset) => Contact(HighLimitDisc, "High-limit disc", ContactKind.LimitDisc, false, reset);

    internal static Interlock Lid => Contact(LidSwitch, "Lid switch", ContactKind.LidSwitch, true);

    internal static Interlock Door => Contact(DoorSwitch, "Door switch", ContactKind.DoorSwitch, true);

    internal static Interlock Vacuum => Contact(VacuumSwitch, "Vacuum switch", ContactKind.VacuumSwitch, true);

    internal static Interlock Proof => Contact(ProofDisc, "Proof-of-fire disc", ContactKind.ProofDisc, true);

    internal static Interlock WaterLimit =>
        Contact(SafetyThermostat, "Safety thermostat", ContactKind.SafetyThermostat, false, ResetKind.Manual);

    internal static Interlock FanDisc => Contact(RoomAirDisc, "Room-air-blower disc", ContactKind.FanDisc, true);

    internal static Motor Motor(string id, string name, double volts, double windingOhm, double runningA, double stalledA) =>
        new(id, name, Loose, Loose, volts, windingOhm, runningA, 0.6, stalledA, 0.75);

    internal static Igniter Wire(double volts, double watts) =>
        new(ComponentIds.Igniter, "Igniter", Loose, Loose, IgniterKind.Wire, volts, watts, 1.071);

    internal static Igniter Ceramic(double volts, double watts) =>
        new(ComponentIds.Igniter, "Igniter", Loose, Loose, IgniterKind.Ceramic, volts, watts, 2.2);

    internal static ResistanceProbe Pt1000(string id, string name) => new(id, name, Loose, Loose, 1077.94);

    internal static ResistanceProbe Ntc(string id, string name) => new(id, name, Loose, Loose, 12.5e3);

    private static Interlock Contact(string id, string name, ContactKind kind, bool normallyOpen, ResetKind reset = ResetKind.Automatic) =>
        new(id, name, Loose, Loose, kind, normallyOpen, reset, 0.05);
}
