using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Photos;

/// <summary>What a tag means: one window or unit, or several, and then nobody can tell which.</summary>
internal sealed class TagMeaning
{
    private readonly List<Subject> _now = [];
    private readonly List<(Subject Of, string Was)> _before = [];

    /// <summary>What is called so.</summary>
    public void Add(Subject of) => _now.Add(of);

    /// <summary>What was called so before.</summary>
    public void AddBefore(Subject of, string was) => _before.Add((of, was));

    /// <summary>What somebody means who writes it today: what is called so now, else what was called so before.</summary>
    public (Subject? Of, string? Before, string Unclear) Today => Several(_now) ? (null, null, $"{_now[0].Name} is the tag of several")
        : _now.Count > 0 ? (_now[0], null, "")
        : !Several(_before.Select(b => b.Of)) ? (_before[0].Of, _before[0].Was, "")
        : (null, null, $"{_before[0].Was} was the tag of {Names(_before.Select(b => b.Of))}");

    /// <summary>What a label means, which may have been printed on any day.</summary>
    public (Subject? Of, string? Before, string Unclear) AtAnyTime =>
        _now.Count > 0 && _before.Exists(b => b.Of.Id != _now[0].Id)
            ? (null, null, $"{_now[0].Name} was the tag of {Names(_before.Select(b => b.Of).Where(o => o.Id != _now[0].Id))} before")
            : Today;

    private static bool Several(IEnumerable<Subject> of) => of.DistinctBy(o => o.Id).Skip(1).Any();

    private static string Names(IEnumerable<Subject> of) => string.Join(" and ", of.DistinctBy(o => o.Id).Select(o => o.Name));
}
