namespace Emberwright.Stove.Patterns;

/// <summary>How fuel reaches the burn pot.</summary>
public enum FeedKind
{
    /// <summary>An auger lifts it out of the hopper and it falls down a chute.</summary>
    Chute,
    /// <summary>An auger pushes it up from below.</summary>
    FromBelow,
}

/// <summary>What the exchanger is made of.</summary>
public enum ExchangerKind
{
    /// <summary>Tubes across the top of the firebox; room air inside, gas outside.</summary>
    Tubes,
    /// <summary>The same, scraped by a plate on a pull rod.</summary>
    ScrapedTubes,
    /// <summary>Fins above a panel in the firebox roof that swings down.</summary>
    SwingDownPanel,
    /// <summary>Upright ducts behind the firebox.</summary>
    Ducts,
    /// <summary>Folded plates above the fire.</summary>
    Plates,
    /// <summary>Upright tubes through a water jacket, with scrapers in them.</summary>
    WaterTubes,
}

/// <summary>Where the ash passages lie.</summary>
public enum AshWay
{
    /// <summary>Down both sides of the firebox.</summary>
    Sides,
    /// <summary>A chamber behind the firebox wall that is not seen until its covers come off.</summary>
    HiddenChamber,
    /// <summary>Down the back, with a pocket at its foot.</summary>
    Back,
}

/// <summary>What regulates the combustion air.</summary>
public enum IntakeKind
{
    /// <summary>An open pipe from the room.</summary>
    Pipe,
    /// <summary>A pipe with a damper set by hand.</summary>
    Damper,
    /// <summary>A pipe with a flapper that falls shut.</summary>
    Flapper,
    /// <summary>A duct from outdoors.</summary>
    Duct,
}

/// <summary>What a section through the stove shows of its form beside its air path and wiring.</summary>
/// <param name="Feed">How fuel reaches the burn pot.</param>
/// <param name="Exchanger">What the exchanger is made of.</param>
/// <param name="Ash">Where the ash passages lie.</param>
/// <param name="Intake">What regulates the combustion air.</param>
/// <param name="IsInsert">True when it stands in a masonry fireplace.</param>
public sealed record StoveForm(FeedKind Feed, ExchangerKind Exchanger, AshWay Ash, IntakeKind Intake, bool IsInsert = false);
