using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Testing;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording;

/// <summary>An entry that TrimOut would not take, with its reason.</summary>
public sealed record Refused(Stage Stage, string Name, Fact? Fact, string Typed, string Reason);

/// <summary>What an installer writes down: every entry through the same decisions as a person's, named as people name things.</summary>
public sealed class Book
{
    /// <summary>The name of the job itself.</summary>
    public const string JobItself = "house";

    private readonly TestJob _job;
    private readonly Slips _slips;
    private readonly Dictionary<(ItemKind Kind, string Name), string> _ids = new() { [(ItemKind.House, JobItself)] = House.RootId };
    private readonly Dictionary<string, string> _names = new() { [House.RootId] = JobItself };
    private readonly Dictionary<(string Name, Fact Fact), Stage> _written = [];
    private readonly List<Refused> _refused = [];

    /// <summary>A book for a house, with nothing of the kit that every new house starts from: the sheets are at hand.</summary>
    public Book(bool metric, Slips slips)
    {
        _job = new TestJob(metric ? DisplayUnits.Millimetres : DisplayUnits.Inches);
        _slips = slips;
        var kit = _job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed).OrderBy(i => i.Place).ToList();
        _job.Do(kit.Select(i => RemoveItems.Remove(_job.House, i).Value).Aggregate((a, b) => a.And(b)));
    }

    /// <summary>The stage that is written down.</summary>
    public Stage Now { get; private set; }

    /// <summary>The house as it is recorded.</summary>
    public House House => _job.House;

    /// <summary>Entries that were not taken.</summary>
    public IReadOnlyList<Refused> Refusals => _refused;

    /// <summary>Turns to the page of a stage.</summary>
    public void Turn(Stage to, DateOnly day)
    {
        Now = to;
        var morning = new DateTimeOffset(day.ToDateTime(new TimeOnly(8, 0)), TimeSpan.Zero);
        if (morning > _job.Clock.GetUtcNow())
            _job.Clock.SetUtcNow(morning);
    }

    /// <summary>The stage in which a fact was first written; null when it never was.</summary>
    public Stage? WrittenIn(string name, Fact fact) => _written.TryGetValue((name, fact), out var stage) ? stage : null;

    /// <summary>The name that the installer has for an item.</summary>
    public string NameOf(string id) => _names.GetValueOrDefault(id) ?? House.Find(id)?.Kind.ToString() ?? id;

    /// <summary>The id of what has that name.</summary>
    public string IdOf(ItemKind kind, string name) => _ids[(kind, name)];

    /// <summary>Whether something has that name.</summary>
    public bool Has(ItemKind kind, string name) => _ids.ContainsKey((kind, name));

    /// <summary>The unit of that name as it is recorded.</summary>
    public Unit Unit(string name) => House.FindUnit(IdOf(ItemKind.Unit, name))!;

    /// <summary>Adds something that has a name of its own.</summary>
    public bool Add(ItemKind kind, string name)
    {
        if (!Take(AddItems.Named(House, kind, name), name, null, name))
            return false;
        Know(kind, name, Added()[0]);
        return true;
    }

    /// <summary>Adds a room.</summary>
    public void AddRoom(string name, string floor)
    {
        if (Take(AddItems.Room(House, name, floor), name, RoomFacts.Name, name))
            Know(ItemKind.Room, name, Added()[0]);
    }

    /// <summary>Adds a window with the units that hang in it.</summary>
    public void AddWindow(string tag, string typedTag, string room, IReadOnlyList<string> units)
    {
        if (!Take(AddItems.Window(House, typedTag, IdOf(ItemKind.Room, room)), tag, WindowFacts.Tag, typedTag))
            _job.Do(AddItems.Window(House, tag, IdOf(ItemKind.Room, room)));
        var added = Added();
        Know(ItemKind.Window, tag, added[0]);
        KnowUnit(units[0], added[1], added[2]);
        foreach (var unit in units.Skip(1))
        {
            Take(AddItems.Unit(House, IdOf(ItemKind.Window, tag)), unit, null, unit);
            KnowUnit(unit, Added()[0], Added()[1]);
        }
    }

    /// <summary>Adds a leg of a home run.</summary>
    public void AddLeg(string run, string leg)
    {
        Take(AddItems.Leg(Unit(run).Run!), leg, null, leg);
        Know(ItemKind.Leg, leg, Added()[0]);
    }

    /// <summary>Adds a preset of a remote.</summary>
    public void AddPreset(string remote, string name)
    {
        Take(AddItems.Preset(House.Remotes.Single(r => r.Id == IdOf(ItemKind.Remote, remote)), name), name, PresetFacts.Name, name);
        Know(ItemKind.Preset, $"{remote}/{name}", Added()[0]);
    }

    /// <summary>Records what was done in service to something, under a name of its own.</summary>
    /// <returns>Whether it was taken.</returns>
    public bool AddService(string name, Item about, ServiceSaid said)
    {
        if (!Take(RecordService.Of(House, about, said), name, null, KebabCase.Of(said.Kind)))
            return false;
        Know(ItemKind.Service, name, Added()[0]);
        return true;
    }

    /// <summary>Types values to facts of one item; a slip may change or leave out some.</summary>
    public void Put(string name, params (Fact Fact, string? Seen)[] entries)
    {
        Draft? all = null;
        foreach (var (fact, seen) in entries.Where(e => e.Seen is not null))
        {
            if (_slips.Typed(name, fact, seen!) is not { } typed)
                continue;
            var draft = SetFact.Typed(House, House.Find(IdOf(fact.Subject, name))!, fact, typed);
            if (!draft.Ok)
            {
                _refused.Add(new Refused(Now, name, fact, typed, draft.Reason!));
                continue;
            }
            all = all is null ? draft.Value : all.And(draft.Value);
            _written.TryAdd((name, fact), Now);
        }
        if (all is not null)
            _job.Do(all);
    }

    /// <summary>Types a value as it should be, without any slip; an empty text takes the value away.</summary>
    public bool Correct(string name, Fact fact, string typed) =>
        Take(SetFact.Typed(House, House.Find(IdOf(fact.Subject, name))!, fact, typed), name, fact, typed);

    /// <summary>Does something that no page has.</summary>
    public void Do(Draft draft) => _job.Do(draft);

    /// <summary>Types a value that belongs to one unit, such as whether a remote moves it.</summary>
    public void PutFor(string name, Fact fact, string unit, string typed)
    {
        Take(SetFact.Typed(House, House.Find(IdOf(fact.Subject, name))!, fact, typed, IdOf(ItemKind.Unit, unit)), name, fact, typed);
        _written.TryAdd((name, fact), Now);
    }

    /// <summary>Puts what the program offers, as a person takes it.</summary>
    public void TakeOffered(string unit, params Fact[] facts) => Put(unit, [.. facts.Select(f => (f, Offers.For(Unit(unit), f)))]);

    /// <summary>Says that all values of a part were checked against its sheet.</summary>
    public void HoldAgainstSheet(ItemKind kind, string name)
    {
        if (_slips.Marks(name, "sheet"))
            _job.Do(KitCheck.All(House, House.Find(IdOf(kind, name))!));
    }

    /// <summary>Marks every step of a phase that a subject has and that may be marked now.</summary>
    public void MarkAll(Subject subject, string name, Phase phase, params string[] except)
    {
        Draft? all = null;
        foreach (var step in StepList.Of(phase, subject).Where(s => subject.MarkOf(s) is null && !except.Contains(s.Id) && _slips.Marks(name, s.Id)))
        {
            var draft = MarkStep.Done(subject, step);
            if (draft.Ok)
                all = all is null ? draft.Value : all.And(draft.Value);
            else
                _refused.Add(new Refused(Now, name, null, step.Id, draft.Reason!));
        }
        if (all is not null)
            _job.Do(all);
    }

    /// <summary>Does what the program may refuse.</summary>
    public bool Take(Result<Draft> draft, string name, Fact? fact, string typed)
    {
        if (draft.Ok)
            _job.Do(draft);
        else
            _refused.Add(new Refused(Now, name, fact, typed, draft.Reason!));
        return draft.Ok;
    }

    private IReadOnlyList<string> Added() => [.. _job.Scribe.Log.Changes[^1].Edits.OfType<Edit.Add>().Select(e => e.Item)];

    private void KnowUnit(string name, string unit, string run)
    {
        Know(ItemKind.Unit, name, unit);
        Know(ItemKind.Run, name, run);
    }

    private void Know(ItemKind kind, string name, string id)
    {
        _ids[(kind, name)] = id;
        _names[id] = name;
    }
}
