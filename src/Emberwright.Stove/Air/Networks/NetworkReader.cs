using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;

namespace Emberwright.Stove.Air.Networks;

/// <summary>Walks a network's JSON and collects what is wrong with it.</summary>
internal sealed class NetworkReader(JsonProblems problems)
{
    private const double UsualDischarge = 0.6;
    private const double UsualExponent = 0.65;
    private static readonly string[] Kinds = ["opening", "crack", "passage", "blower"];
    private static readonly Origin Given = new(OriginKind.Entered, "network file");

    public AirNetwork? Network(JsonPlace at)
    {
        if (!at.IsObject())
        {
            return null;
        }

        at.Only("$schema", "format", "version", "name", "outdoor", "nodes", "links");
        if (at.Needed("format") is { Length: > 0 } format && format != NetworkFile.Format)
        {
            problems.Report("$.format", $"\"{format}\" is not a network", $"A network has \"format\": \"{NetworkFile.Format}\".");
        }

        if (at.Count("version") is { } version && version > NetworkFile.Version)
        {
            problems.Report("$.version", $"version {version} is newer than this program knows ({NetworkFile.Version})", "Update the program.");
        }

        var outdoor = at.Member("outdoor");
        outdoor?.Only("temperature", "altitude", "pressure");
        var outdoorC = Within(outdoor, "temperature", Dimension.Temperature, -60, 1500) ?? 20;
        var ambientPa = Within(outdoor, "pressure", Dimension.Pressure, 40_000, 120_000)
            ?? Atmosphere.PressurePa(Within(outdoor, "altitude", Dimension.Length, Atmosphere.LowestM, Atmosphere.HighestM) ?? 0);

        var nodes = Nodes(at, outdoorC);
        var links = Links(at, nodes);
        var network = new AirNetwork(at.Text("name") ?? "", outdoorC, ambientPa, nodes, links);
        Whole(network);
        return network;
    }

    private List<NetworkNode> Nodes(JsonPlace at, double outdoorC)
    {
        var nodes = new List<NetworkNode>();
        foreach (var item in at.Items("nodes"))
        {
            item.Only("id", "height", "temperature", "pressure");
            var id = item.Needed("id");
            Unique(nodes.Any(n => n.Id == id), item, id);
            nodes.Add(new NetworkNode(
                id,
                Within(item, "height", Dimension.Length, -1000, 1000) ?? 0,
                Within(item, "temperature", Dimension.Temperature, -60, 1500) ?? outdoorC,
                Within(item, "pressure", Dimension.Pressure, -20_000, 20_000)));
        }

        return nodes;
    }

    private List<Link> Links(JsonPlace at, List<NetworkNode> nodes)
    {
        var links = new List<Link>();
        foreach (var item in at.Items("links"))
        {
            var id = item.Needed("id");
            Unique(links.Any(l => l.Id == id), item, id);
            var (from, to) = (End(item, "from", nodes), End(item, "to", nodes));
            if (from.Length > 0 && from == to)
            {
                problems.Report(item.Path + ".to", "a link ends where it begins", "Name another node.");
            }

            _ = item.Needed("kind");
            Link? link = item.OneOf("kind", Kinds) switch
            {
                "opening" => Hole(item, id, from, to),
                "crack" => Seam(item, id, from, to),
                "passage" => Duct(item, id, from, to),
                "blower" => Fan(item, id, from, to),
                _ => null,
            };
            if (link is not null)
            {
                links.Add(link);
            }
        }

        return links;
    }

    private Opening Hole(JsonPlace at, string id, string from, string to)
    {
        at.Only("id", "kind", "from", "to", "diameter", "areaM2", "discharge");
        return new Opening(id, from, to, Area(at), Within(at, "discharge", 0.05, 1) ?? UsualDischarge, Given);
    }

    private Crack Seam(JsonPlace at, string id, string from, string to)
    {
        at.Only("id", "kind", "from", "to", "leakage", "at", "exponent");
        var exponent = Within(at, "exponent", 0.5, 1) ?? UsualExponent;
        var flow = NeededWithin(at, "leakage", Dimension.VolumeFlow, 1e-9, 100) ?? 1;
        var pa = NeededWithin(at, "at", Dimension.Pressure, 0.1, 1000) ?? 1;
        return new Crack(id, from, to, flow / Math.Pow(pa, exponent), exponent, Given);
    }

    private Passage Duct(JsonPlace at, string id, string from, string to)
    {
        at.Only("id", "kind", "from", "to", "diameter", "areaM2", "length", "roughness", "loss");
        var area = Area(at);
        var diameter = at.Has("diameter") ? at.Quantity("diameter", Dimension.Length) ?? 1 : Math.Sqrt(4 * area / Math.PI);
        var length = Within(at, "length", Dimension.Length, 0, 1000) ?? 0;
        var roughness = Within(at, "roughness", Dimension.Length, 0, 0.05) ?? 0;
        if (roughness > 0.1 * diameter)
        {
            problems.Report(at.Path + ".roughness", "more than a tenth of the diameter", "Give the height of the wall's unevenness, 0.1 to 5 mm as a rule.");
        }

        var loss = Within(at, "loss", 0, 1e6) ?? 0;
        if (length == 0 && loss == 0)
        {
            problems.Report(at.Path, "neither length nor loss is given, so nothing resists", "Give length, loss or both.");
        }

        return new Passage(id, from, to, area, diameter, length, roughness, loss, Given);
    }

    private Blower Fan(JsonPlace at, string id, string from, string to)
    {
        at.Only("id", "kind", "from", "to", "shutOff", "linearPaSPerM3", "quadraticPaS2PerM6", "speed", "densityKgPerM3");
        var shutOff = NeededWithin(at, "shutOff", Dimension.Pressure, 0.01, 20_000) ?? 1;
        var linear = Within(at, "linearPaSPerM3", 0, 1e9) ?? 0;
        if (!at.Has("quadraticPaS2PerM6"))
        {
            problems.Report(at.Path + ".quadraticPaS2PerM6", "missing", "This member must be given.");
        }

        var quadratic = Within(at, "quadraticPaS2PerM6", 1e-3, 1e12) ?? 1;
        var speed = Within(at, "speed", 0, 3) ?? 1;
        return new Blower(id, from, to,
            new FanCurve(shutOff * speed * speed, linear * speed, quadratic, Within(at, "densityKgPerM3", 0.1, 3) ?? 1.2), Given);
    }

    private double Area(JsonPlace at)
    {
        if (Within(at, "areaM2", 1e-9, 1000) is { } area)
        {
            return area;
        }

        if (Within(at, "diameter", Dimension.Length, 1e-5, 30) is { } diameter)
        {
            return Math.PI * diameter * diameter / 4;
        }

        if (!at.Has("areaM2") && !at.Has("diameter"))
        {
            problems.Report(at.Path, "its size is missing", "Give diameter, e.g. \"76 mm\", or areaM2.");
        }

        return 1;
    }

    private string End(JsonPlace at, string name, List<NetworkNode> nodes)
    {
        var id = at.Needed(name);
        if (id.Length > 0 && nodes.All(n => n.Id != id))
        {
            problems.Report($"{at.Path}.{name}", $"\"{id}\" is not a node", $"Use one of {string.Join(", ", nodes.Select(n => n.Id))}.");
        }

        return id;
    }

    private void Unique(bool taken, JsonPlace at, string id)
    {
        if (taken)
        {
            problems.Report(at.Path + ".id", $"\"{id}\" is used twice", "Give each its own name.");
        }
    }

    private void Whole(AirNetwork network)
    {
        if (network.Links.Count == 0)
        {
            problems.Report("$.links", "there is no link", "Give at least one.");
        }

        if (network.Nodes.Count > AirNetwork.MostNodes || network.Links.Count > AirNetwork.MostLinks)
        {
            problems.Report("$", $"{network.Nodes.Count} nodes and {network.Links.Count} links are more than {AirNetwork.MostNodes} and {AirNetwork.MostLinks}", "Split the network, or join links that run side by side.");
        }

        foreach (var adrift in problems.Found.Count > 0 ? [] : network.Adrift())
        {
            var index = network.Nodes.ToList().IndexOf(adrift);
            problems.Report($"$.nodes[{index}]", $"no link leads from \"{adrift.Id}\" to a given pressure", "Link it, or give it a pressure.");
        }
    }

    private double? NeededWithin(JsonPlace at, string name, Dimension dimension, double least, double most)
    {
        _ = at.Needed(name);
        return Within(at, name, dimension, least, most);
    }

    private double? Within(JsonPlace? at, string name, Dimension dimension, double least, double most) =>
        at is { } place ? Within(place, name, place.Quantity(name, dimension), least, most, Units.All.First(u => u.Dimension == dimension && u.Scale == 1 && u.Zero == 0).Symbol) : null;

    private double? Within(JsonPlace at, string name, double least, double most) => Within(at, name, at.Number(name), least, most, "");

    private double? Within(JsonPlace at, string name, double? value, double least, double most, string unit)
    {
        if (value is { } number && !(number >= least && number <= most))
        {
            problems.Report($"{at.Path}.{name}", $"{number:G6} {unit}".TrimEnd() + $" is outside {least:G6} to {most:G6} {unit}".TrimEnd(), "Check the number and its unit.");
            return null;
        }

        return value;
    }
}
