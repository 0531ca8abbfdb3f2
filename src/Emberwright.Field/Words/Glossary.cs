namespace Emberwright.Field.Words;

/// <summary>One word of the trade as this app uses it.</summary>
/// <param name="Id">Stable id, the anchor of its entry.</param>
/// <param name="Name">The word.</param>
/// <param name="Meaning">What it means here, in a sentence or two.</param>
/// <param name="Also">Other words people use for it.</param>
public sealed record Term(string Id, string Name, string Meaning, params string[] Also);

/// <summary>Every word the screens use that a newcomer might ask about. Meanings are common practice, no source, unless the entry says otherwise.</summary>
public static class Glossary
{
    /// <summary>All entries, by name.</summary>
    public static IReadOnlyList<Term> All { get; } =
    [
        .. ((Term[])
        [
            new("appliance", "Appliance", "One stove at one address.", "stove", "unit", "heater"),
            new("area", "Area", "One of the four parts every service covers: ash passages, combustion blower, vent, room-air blower."),
            new("as-found", "As found", "Readings before any work, so that the work can be judged."),
            new("as-left", "As left", "Readings after all work. They are this stove’s own baseline for the next visit."),
            new("ash-passages", "Ash passages", "Where gas goes down from the firebox to the combustion blower, and where ash settles; often hidden behind the firebox wall.", "ash traps", "ash chamber", "baffle chamber"),
            new("blower-inlet", "Blower inlet", "The port just before the combustion blower: the strongest vacuum in the stove."),
            new("burn-pot", "Burn pot", "The pot the pellets burn in. Air comes through its holes.", "fire pot", "firepot", "brazier"),
            new("check", "Check", "Something one can do to learn: look, measure, try, clean. The next check is the one worth most for its cost now."),
            new("co-room", "CO in the room", "Carbon monoxide where people breathe. Any rise while the stove burns is exhaust leaking: stop. The meter is zeroed outdoors.", "carbon monoxide", "monoxide"),
            new("combustion-blower", "Combustion blower", "Draws the gas through the stove and pushes it up the vent. Before it everything is below room pressure, after it above.", "exhaust fan", "draft fan", "draught fan", "exhaust blower", "combustion fan"),
            new("condition", "State of the stove", "What the stove does while something is read: fan only, door open, intake stopped, low burn, high burn."),
            new("damper", "Damper", "A plate set by hand that lets in more or less combustion air."),
            new("exchanger", "Exchanger", "Where the gas gives its heat to room air or water. Ash on it insulates; ash between it blocks.", "heat exchanger", "heat tubes"),
            new("fan-only", "Fan only", "Fire out, combustion blower at full speed, everything shut. The plainest state to compare readings in."),
            new("feed", "Feed", "How fast fuel reaches the fire, and the motor and screw that bring it.", "auger", "auger motor", "feed motor", "screw"),
            new("firebox", "Firebox", "The chamber the fire burns in; in use a little below room pressure."),
            new("healthy", "Healthy band", "The range a reading should have on this stove, with this vent, at this altitude, today. Nine healthy stoves in ten lie inside it."),
            new("high-limit", "High limit", "A switch that stops the feed when something gets too hot. Some reset by themselves, some by a button.", "snap disc", "limit switch", "thermal cut-out", "overheat switch"),
            new("hopper", "Hopper", "Where the pellets wait. Its lid seals, and often stops the feed when open."),
            new("igniter", "Igniter", "A hot rod that lights the pellets through a hole in the burn pot.", "glow rod", "hot rod", "cartridge"),
            new("intake", "Air inlet", "Where combustion air comes in, from the room or through an outside-air kit.", "outside air", "fresh air", "combustion air inlet"),
            new("journal", "Record", "Everything recorded on a visit, in order. Nothing is edited or deleted; a correction is a new entry."),
            new("lambda", "Excess air", "How much more air goes through than the fuel needs. Oxygen in the flue gas tells it."),
            new("margin", "Margin", "How far a reading stands from what opens a safety switch. A gust takes a few pascals of it."),
            new("pattern", "Construction", "A family of stoves built alike: how fuel is fed, how fire is proved, where air goes, how controls are wired. It stands in where the manual is missing."),
            new("port", "Port", "A place where a pressure is measured: firebox, blower inlet, vent collar."),
            new("pressure-profile", "Pressure profile", "The picture of pressure along the way of the air, from room to outdoors. Where it leaves the ribbon, something is wrong."),
            new("proof", "Proof", "A test that a safety function works: hose off, lid open, shutdown, smoke pencil."),
            new("proof-of-fire", "Proof of fire", "How the board knows that it burns: a disc on the exhaust, a thermocouple, a probe.", "proof of fire switch", "snap disc", "flame sensor", "POF"),
            new("restriction", "Restriction", "How much of a passage is lost: open below 15 %, fair below 40, poor below 70, else shut."),
            new("room-air-blower", "Room-air blower", "Blows room air over the exchanger and out of the grille.", "convection fan", "distribution fan", "convection blower", "distribution blower", "room fan"),
            new("run-on", "Run-on", "The blowers going on after the fire is out, until the stove is cool."),
            new("seal", "Seal", "What closes a signed visit: it shows whether anything it covers was changed since."),
            new("sensing-hose", "Sensing hose", "The small hose to the vacuum switch. Where it joins decides what the switch sees. Clear it only off the switch.", "vacuum hose", "pressure hose"),
            new("stop-use", "Stop-use notice", "The written instruction not to operate the appliance, with the reason and who may release it.", "red tag", "lock-out notice"),
            new("stove-card", "Stove card", "What is known of one make and model: what differs from its construction. A file one can hand on.", "card"),
            new("suspect", "Suspect", "A fault with its chance, given everything recorded. Open it to see what it rests on."),
            new("tee", "Tee", "The fitting behind the stove with a cap below, where swept ash falls. It comes last.", "clean-out tee", "clean-out"),
            new("test-fire", "Test fire", "Half an hour on high after the work, with CO in the room measured."),
            new("test-point", "Test point", "A place on the wiring where a meter lead goes."),
            new("three-state", "Cold test", "The same ports read closed, with the door open and with the intake stopped, then with the blower off. Together they tell passages, vent and wheel apart."),
            new("thermocouple", "Thermocouple", "A probe in the firebox that makes some millivolts when it is hot."),
            new("vacuum-switch", "Vacuum switch", "Lets the feed run only while the blower draws enough.", "pressure switch", "draft switch", "air switch", "differential switch"),
            new("vent", "Vent", "The pipe from the stove to outdoors. After the blower it stands above room pressure, so its joints must be tight.", "flue", "chimney", "exhaust pipe", "pellet pipe"),
            new("vent-collar", "Vent collar", "The port where the vent begins, just after the blower."),
        ]).OrderBy(term => term.Name, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The entry of an id.</summary>
    /// <exception cref="KeyNotFoundException">No entry goes by it.</exception>
    public static Term Of(string id) => All.FirstOrDefault(term => term.Id == id) ?? throw new KeyNotFoundException($"No word goes by '{id}'.");
}
