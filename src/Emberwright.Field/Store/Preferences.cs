using System.Text.Json;
using Emberwright.Stove.Quantities;

namespace Emberwright.Field.Store;

/// <summary>What this phone remembers beside the journals: who works with it, in which units. Loaded once at start.</summary>
public sealed class Preferences(JournalStore store)
{
    /// <summary>The units readings are typed and shown in.</summary>
    public UnitSystem Units { get; private set; } = UnitSystem.Us;

    /// <summary>The technician's name, written as author of each entry; empty until given.</summary>
    public string Author { get; private set; } = "";

    /// <summary>This device's id in the journal; made once and never shared with another device.</summary>
    public string Device { get; private set; } = "";

    /// <summary>True once the demo visits were laid out on this phone, even if removed since.</summary>
    public bool DemoSeen { get; private set; }

    /// <summary>The instruments that travel with this phone; of each kind the last one named is taken.</summary>
    public IReadOnlyList<OwnInstrument> Instruments { get; private set; } = [];

    /// <summary>True when a photo's caption tells where it was taken; the pictures themselves never do.</summary>
    public bool KeepPlace { get; private set; }

    /// <summary>Reads what is kept; makes the device's id on first use.</summary>
    public async Task Load()
    {
        if (Enum.TryParse<UnitSystem>(await store.Setting("units"), out var units)) Units = units;
        Author = await store.Setting("author") ?? "";
        if (await store.Setting("instruments") is { } own) Instruments = JsonSerializer.Deserialize(own, StoreJson.Default.IReadOnlyListOwnInstrument) ?? [];
        KeepPlace = await store.Setting("keep-place") == "yes";
        DemoSeen = await store.Setting("demo-seen") is not null;
        if (await store.Setting("device") is { } device) Device = device;
        else await store.KeepSetting("device", Device = Guid.CreateVersion7().ToString());
    }

    /// <summary>Changes the units.</summary>
    public Task Use(UnitSystem units) => store.KeepSetting("units", (Units = units).ToString());

    /// <summary>Changes the technician's name.</summary>
    public Task Sign(string author) => store.KeepSetting("author", Author = author.Trim());

    /// <summary>Chooses whether captions tell where a photo was taken.</summary>
    public Task TellPlace(bool tell) => store.KeepSetting("keep-place", (KeepPlace = tell) ? "yes" : "no");

    /// <summary>Adds an instrument, in the place of one of the same name.</summary>
    public Task Carry(OwnInstrument instrument) => Keep([.. Instruments.Where(one => one.Name != instrument.Name), instrument]);

    /// <summary>Takes an instrument off the list; what was read with it stays as it was.</summary>
    public Task PutAway(OwnInstrument instrument) => Keep([.. Instruments.Where(one => one != instrument)]);

    private Task Keep(IReadOnlyList<OwnInstrument> instruments) =>
        store.KeepSetting("instruments", JsonSerializer.Serialize(Instruments = instruments, StoreJson.Default.IReadOnlyListOwnInstrument));

    /// <summary>Remembers that the demo was laid out.</summary>
    public Task SawDemo()
    {
        DemoSeen = true;
        return store.KeepSetting("demo-seen", "yes");
    }
}
