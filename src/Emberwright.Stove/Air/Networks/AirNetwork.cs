namespace Emberwright.Stove.Air.Networks;

/// <summary>A place in a network; with a given pressure it is a surrounding, without one its pressure is sought.</summary>
/// <param name="Id">Name, unique in the network.</param>
/// <param name="HeightM">Height above any common level, m.</param>
/// <param name="TemperatureC">Temperature of its air, °C; given, not sought.</param>
/// <param name="PressurePa">Total pressure against still outdoor air at the same height, Pa; null when sought.</param>
public sealed record NetworkNode(string Id, double HeightM, double TemperatureC, double? PressurePa);

/// <summary>
/// Any network of openings, cracks, passages and blowers between places of given temperature, some of given pressure. It is
/// not a stove: nothing burns in it and no temperature is sought. The links are those a stove's air path is made of.
/// </summary>
/// <param name="Name">What it is; may be empty.</param>
/// <param name="OutdoorC">Outdoor temperature, °C.</param>
/// <param name="AmbientPa">Absolute ambient pressure, Pa.</param>
/// <param name="Nodes">Places.</param>
/// <param name="Links">Ways between them; <see cref="Link.From"/> and <see cref="Link.To"/> are ids of nodes.</param>
public sealed record AirNetwork(string Name, double OutdoorC, double AmbientPa, IReadOnlyList<NetworkNode> Nodes, IReadOnlyList<Link> Links)
{
    /// <summary>Most nodes of one network: its matrix is dense.</summary>
    public const int MostNodes = 400;

    /// <summary>Most links of one network.</summary>
    public const int MostLinks = 2000;

    /// <summary>Free nodes from which no link leads to a given pressure: nothing holds theirs.</summary>
    public IReadOnlyList<NetworkNode> Adrift()
    {
        var held = Nodes.Where(n => n.PressurePa is not null).Select(n => n.Id).ToHashSet(StringComparer.Ordinal);
        var grew = true;
        while (grew)
        {
            grew = false;
            foreach (var link in Links)
            {
                if (held.Contains(link.From) != held.Contains(link.To))
                {
                    held.Add(link.From);
                    held.Add(link.To);
                    grew = true;
                }
            }
        }

        return [.. Nodes.Where(n => !held.Contains(n.Id))];
    }
}
