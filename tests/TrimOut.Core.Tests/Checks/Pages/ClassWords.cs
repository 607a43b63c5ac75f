using System.Xml.Linq;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Tests.Checks.Pages;

/// <summary>What the XML documentation beside the built assembly says of a class.</summary>
internal sealed class ClassWords
{
    private static readonly Lazy<Dictionary<string, XElement>> Members = new(() => XDocument
        .Load(System.IO.Path.ChangeExtension(typeof(House).Assembly.Location, ".xml"))
        .Descendants("member").ToDictionary(m => m.Attribute("name")!.Value));

    private readonly XElement _member;

    public ClassWords(Type of) => _member = Members.Value.GetValueOrDefault("T:" + of.FullName)
        ?? throw new InvalidOperationException($"{of.FullName} has no XML summary.");

    /// <summary>Its summary.</summary>
    public string Summary => Plain(_member.Element("summary")!);

    /// <summary>What the paragraph of its remarks that begins with these words says after them, as a sentence.</summary>
    public string Remark(string begin) =>
        _member.Element("remarks")?.Elements("para").Select(Plain).SingleOrDefault(p => p.StartsWith(begin + ": ", StringComparison.Ordinal)) is { } said
            ? char.ToUpperInvariant(said[begin.Length + 2]) + said[(begin.Length + 3)..]
            : throw new InvalidOperationException($"The XML remarks of {_member.Attribute("name")!.Value} have no paragraph that begins with \"{begin}: \".");

    private static string Plain(XElement words) => string.Join(' ', words.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
