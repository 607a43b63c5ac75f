using Microsoft.Extensions.Time.Testing;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Testing;

/// <summary>A house that a test writes in the words of the job: <c>new TestJob().Window("W01").Say("W01", UnitFacts.LeadSide, "left")</c>.</summary>
public sealed class TestJob
{
    public TestJob(DisplayUnits units = DisplayUnits.Inches, IHouseStore? store = null, StepList? steps = null)
    {
        Clock = new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero));
        Scribe = new Scribe(store ?? new MemoryStore(), Clock, "Test crew") { Steps = steps ?? StepList.Shipped };
        if (Scribe.Log.Changes.IsEmpty)
            Do(CommonPracticeKit.NewHouse("Test house", units));
    }

    public FakeTimeProvider Clock { get; }

    public Scribe Scribe { get; }

    public House House => Scribe.House;

    public CheckReport Report => CheckReport.Of(House);

    /// <summary>The unit on a window, or the one with that letter: W01, W01B.</summary>
    public Unit Unit(string tag) => House.Units.Single(u => u.Tag == tag);

    public HomeRun Run(string tag) => Unit(tag).Run!;

    /// <summary>Saves a change a minute after the last one.</summary>
    public TestJob Do(Result<Draft> draft)
    {
        Clock.Advance(TimeSpan.FromMinutes(1));
        var saved = draft.Then(Scribe.Record);
        return saved.Ok ? this : throw new InvalidOperationException(saved.Reason);
    }

    public TestJob Do(Draft draft) => Do((Result<Draft>)draft);

    public TestJob Do(Func<TestJob, Result<Draft>> want) => Do(want(this));

    /// <summary>Adds a room where there is none of that name.</summary>
    public TestJob Room(string name, string? floor = null) => House.Rooms.Any(r => SameName.Comparer.Equals(r.Name, name)) ? this
        : Do(AddItems.Room(House, name, floor));

    /// <summary>Adds a window with one unit.</summary>
    public TestJob Window(string tag, string room = "Kitchen", string kind = "Roller")
    {
        Room(room).Do(AddItems.Window(House, tag, House.Rooms.Single(r => SameName.Comparer.Equals(r.Name, room)).Id));
        return Say(tag, UnitFacts.Kind, kind);
    }

    /// <summary>Types a value to a fact of a window, its unit or its home run; the fact tells which.</summary>
    public TestJob Say(string tag, Fact fact, string typed)
    {
        var item = fact.Subject == ItemKind.Window ? House.FindTag(tag)!.Item
            : fact.Subject == ItemKind.Run ? Run(tag).Item
            : Unit(tag).Item;
        return Do(SetFact.Typed(House, item, fact, typed));
    }

    /// <summary>Adds legs to a home run, each as "length place": "60 ft in-wall".</summary>
    public TestJob Legs(string tag, params (string Length, CablePlace Place)[] legs)
    {
        foreach (var (length, place) in legs)
        {
            Do(AddItems.Leg(Run(tag)));
            var leg = Run(tag).Legs[^1].Item;
            Do(SetFact.Typed(House, leg, LegFacts.Length, length));
            Do(SetFact.Typed(House, House.Find(leg.Id)!, LegFacts.Place, KebabCase.Of(place)));
        }
        return this;
    }

    /// <summary>Types a value to a fact of something with a name: a panel, a hub, a remote, a part of the kit, or the house itself.</summary>
    public TestJob SayOf(string name, Fact fact, string typed, string? key = null)
    {
        var item = fact.Subject == ItemKind.House ? House.Job : House.ItemsOf(fact.Subject).Single(i => House.NameOf(i) == name);
        return Do(SetFact.Typed(House, item, fact, typed, key));
    }

    /// <summary>Adds something with a name.</summary>
    public TestJob Add(ItemKind kind, string name) => Do(AddItems.Named(House, kind, name));

    /// <summary>A cable that was pulled, with all that is asked of it.</summary>
    public TestJob Pulled(string tag) => Say(tag, RunFacts.TailAtWindow, "36").Say(tag, RunFacts.TailAtPanel, "36").Say(tag, RunFacts.OnePiece, "yes")
        .Mark(tag, "cable-pulled");

    public TestJob Mark(string tag, string step) => Do(MarkStep.Done(Unit(tag), StepList.Find(step)!));

    /// <summary>What one check says first of one unit, its run or its window.</summary>
    public Outcome Judge(ICheck check, string tag)
    {
        var unit = Unit(tag);
        var of = check.Run(House).Where(r => r.Subject.Id == unit.Id || r.Subject.Id == unit.Window.Id || r.Subject.Id == unit.Run?.Id).ToList();
        return of.Count == 0 ? new Outcome.DoesNotApply() : of[0].Outcome;
    }
}
