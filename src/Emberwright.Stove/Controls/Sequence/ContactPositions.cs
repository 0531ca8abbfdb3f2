namespace Emberwright.Stove.Controls.Sequence;

/// <summary>
/// Moves the contacts with what they sense. Each has a differential: it goes back only at its release value, and one with a
/// button stays tripped until the button is pressed when cool.
/// </summary>
internal sealed class ContactPositions
{
    private readonly Wiring _wiring;
    private readonly BurnScenario _scenario;
    private readonly (int Index, Interlock Contact, ContactSetting? Setting)[] _contacts;

    internal ContactPositions(Wiring wiring, BurnProgram program, BurnScenario scenario)
    {
        _wiring = wiring;
        _scenario = scenario;
        _contacts = [.. wiring.Components
            .Select((part, i) => (i, part as Interlock))
            .Where(c => c.Item2 is not null)
            .Select(c => (c.i, c.Item2!, Setting(program, scenario, c.Item2!)))];
    }

    /// <summary>Positions before the start: cold, with what is already tripped.</summary>
    internal SwitchPositions Initial(SequenceReadings cold)
    {
        ulong open = 0;
        foreach (var (i, contact, _) in _contacts)
        {
            var tripped = _scenario.Tripped.Contains(contact.Id) && !_scenario.ButtonsPressed.Contains(contact.Id);
            if (tripped || contact.Kind is ContactKind.VacuumSwitch or ContactKind.ProofDisc or ContactKind.FanDisc or ContactKind.Thermostat) open |= 1UL << i;
        }
        return Next(new SwitchPositions(open), cold, wanted: false);
    }

    /// <summary>Positions a step later.</summary>
    internal SwitchPositions Next(SwitchPositions now, SequenceReadings readings, bool wanted)
    {
        ulong open = 0;
        foreach (var (i, contact, setting) in _contacts)
            if (IsOpen(contact, setting, now.IsOpen(i), readings, wanted)) open |= 1UL << i;
        return new SwitchPositions(open);
    }

    /// <summary>Contacts that stand tripped and need their button.</summary>
    internal IEnumerable<string> Tripped(SwitchPositions positions) => _contacts
        .Where(c => c.Contact.Reset == ResetKind.Manual && positions.IsOpen(c.Index))
        .Select(c => c.Contact.Id);

    private bool IsOpen(Interlock contact, ContactSetting? setting, bool wasOpen, SequenceReadings readings, bool wanted)
    {
        if (_scenario.HeldOpen.Contains(contact.Id)) return true;
        return contact.Kind switch
        {
            ContactKind.VacuumSwitch => -readings.SensePa * _scenario.HoseShare < (wasOpen ? setting!.ActsAt : setting!.ReleasesAt),
            ContactKind.ProofDisc => readings.ProofDiscC + _scenario.ProofOffsetK < (wasOpen ? setting!.ActsAt : setting!.ReleasesAt),
            ContactKind.FanDisc => readings.ExchangerC < (wasOpen ? setting!.ActsAt : setting!.ReleasesAt),
            ContactKind.LimitDisc => TooHot(contact, setting!, wasOpen, readings.LimitC),
            ContactKind.SafetyThermostat => TooHot(contact, setting!, wasOpen, readings.WaterC),
            ContactKind.Thermostat => !wanted,
            ContactKind.LidSwitch or ContactKind.DoorSwitch => false,
        };
    }

    private static bool TooHot(Interlock contact, ContactSetting setting, bool wasOpen, double temperatureC) => wasOpen
        ? contact.Reset == ResetKind.Manual || temperatureC > setting.ReleasesAt
        : temperatureC >= setting.ActsAt;

    private ContactSetting? Setting(BurnProgram program, BurnScenario scenario, Interlock contact)
    {
        var setting = program.Setting(contact.Id);
        var moved = contact.Kind is not (ContactKind.LidSwitch or ContactKind.DoorSwitch or ContactKind.Thermostat);
        if (moved && setting is null)
            throw new CircuitException($"Program of '{_wiring.Pattern}': contact '{contact.Id}' has no setting; give the value at which it acts and releases.");
        return setting is not null && scenario.SettingRatios.TryGetValue(contact.Id, out var ratio)
            ? setting with { ActsAt = setting.ActsAt * ratio, ReleasesAt = setting.ReleasesAt * ratio }
            : setting;
    }
}
