using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests;

/// <summary>A small house with all its steps done: two rooms on two floors, a wide window with two units, one on a battery, one left out.</summary>
internal static class FinishedHouse
{
    /// <summary>The day that papers of it carry in tests.</summary>
    public static readonly DateOnly Day = new(2026, 9, 30);

    /// <summary>A report of one check alone, so that a new check changes no approved paper of it.</summary>
    public static CheckReport Report(House house) => CheckReport.Of(house, [new LeadAwayFromMotor()]);

    /// <summary>What its papers are written from.</summary>
    public static PaperData Data(HouseLog? log = null)
    {
        log ??= Build().Scribe.Log;
        return new PaperData(log, Day, Report(log.House));
    }

    public static TestJob Build(DisplayUnits units = DisplayUnits.Inches)
    {
        var job = new TestJob(units);
        Job(job);
        job.Clock.Advance(TimeSpan.FromDays(10));
        Power(Windows(job, units));
        job.Clock.Advance(TimeSpan.FromDays(120));
        Controls(job);
        job.SayOf("", HouseFacts.PairPartsOn, "2026-07-01");
        People(job);
        OpenItems(job);
        CheckKit(job);
        foreach (var phase in PhaseNames.All)
        {
            job.Clock.Advance(TimeSpan.FromDays(2));
            foreach (var subject in Progress.Walkers(job.House).ToList())
            {
                foreach (var step in StepList.Of(phase, subject))
                    job.Do(MarkStep.Done(subject, step));
            }
        }
        return job;
    }

    /// <summary>Somebody checked every value of the kit against its sheet.</summary>
    private static void CheckKit(TestJob job) => job.Do(job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed)
        .SelectMany(i => SheetValues.NotHeldIn(i).Select(f => (Part: i, Fact: f)))
        .Aggregate(new Draft("all checked"), (draft, v) => draft.PutStored(v.Part.Id, Companion.Checked(v.Fact.Name), SheetMark.For(v.Part))));

    private static void Job(TestJob job)
    {
        (Fact Fact, string Typed)[] facts =
        [
            (HouseFacts.Client, "R. Example"), (HouseFacts.Address, "12 Sample Lane"), (HouseFacts.Latitude, "39.74"), (HouseFacts.Longitude, "-104.99"),
            (HouseFacts.TimeZone, "America/Denver"), (HouseFacts.SiteContact, "Foreman, 555 0100"),
            (HouseFacts.Crew, "Crew North"),
            (HouseFacts.CodeInForce, "Local wiring rules, 2023 edition"), (HouseFacts.Meter, "Meter 7, calibrated 2026-01-09"),
            (HouseFacts.Openings, "4"), (HouseFacts.OldestPaint, "2026"), (HouseFacts.DrillGuard, "Glasses, masks, a vacuum at the drill"),
            (HouseFacts.PowerCutTold, "All units stay where they are; that of W03 goes on from its battery."),
            (HouseFacts.FramingOn, "2026-03-02"), (HouseFacts.DrywallOn, "2026-04-20"), (HouseFacts.PaintedOn, "2026-06-15"),
            (HouseFacts.HandoverOn, "2026-09-30"),
            (HouseFacts.DemonstratedOn, "2026-09-30"), (HouseFacts.DemonstratedTo, "R. Example"), (HouseFacts.BinderGivenOn, "2026-09-30"),
            (HouseFacts.OpenItemsAgreed, "Sill paint touched up by the painter in October."), (HouseFacts.AcceptedBy, "R. Example"),
            (HouseFacts.AcceptedOn, "2026-09-30"),
            (HouseFacts.WarrantyTerm, "Two years"), (HouseFacts.WarrantyCovers, "Labour and wiring, not wear of fabric."),
            (HouseFacts.WarrantyFrom, "2026-09-30"), (HouseFacts.WarrantyCall, "Crew North, 555 0101"),
            (HouseFacts.Spares, "10 % screws, 1 Handheld"), (HouseFacts.HoursHang, "6.5"),
        ];
        foreach (var (fact, typed) in facts)
            job.SayOf("", fact, typed);
    }

    private static TestJob Windows(TestJob job, DisplayUnits units)
    {
        string Size(string inches, string millimetres) => units == DisplayUnits.Inches ? inches : millimetres;
        job.Room("Kitchen", "Main").Room("Bedroom", "Upper").Room("Stair", "Upper");
        job.Window("W01", "Kitchen", "Roller").Window("W02", "Bedroom", "Cellular").Window("W03", "Bedroom", "Roller").Window("W04", "Bedroom", "Roller");
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W02")!.Id)).Say("W02B", UnitFacts.Kind, "Cellular");
        job.Do(SetFact.Typed(job.House, job.House.FindTag("W04")!.Item, WindowFacts.NotCoveredBecause, "Stained glass: the owner wants it seen."));
        job.Do(SetFact.Typed(job.House, job.House.FindTag("W04")!.Item, WindowFacts.Covered, "no"));
        foreach (var tag in job.House.Windows.Where(w => !w.LeftOut).Select(w => w.Tag).ToList())
        {
            var wide = tag == "W02" ? Size("91", "2311") : Size("45 1/2", "1156");
            (Fact Fact, string Typed)[] facts =
            [
                (WindowFacts.Mount, "inside"), (WindowFacts.Facing, tag == "W01" ? "S" : "NE"), (WindowFacts.Reach, tag == "W03" ? "ladder" : "floor"),
                (WindowFacts.RoughWidth, wide), (WindowFacts.RoughHeight, Size("60", "1524")), (WindowFacts.WidthTop, wide), (WindowFacts.WidthMiddle, wide),
                (WindowFacts.WidthBottom, wide),
                (WindowFacts.HeightLeft, Size("60 1/2", "1537")), (WindowFacts.HeightMiddle, Size("60 1/2", "1537")),
                (WindowFacts.HeightRight, Size("60 3/8", "1534")), (WindowFacts.Depth, Size("5 1/4", "133")),
            ];
            foreach (var (fact, typed) in facts)
                job.Do(SetFact.Typed(job.House, job.House.FindTag(tag)!.Item, fact, typed));
        }
        job.Say("W01", WindowFacts.Horizon, "12").Say("W01", WindowFacts.OverhangDepth, Size("24", "610"))
            .Say("W01", WindowFacts.OverhangAbove, Size("6", "152"));
        foreach (var unit in job.House.Units.Select(u => u.Tag).ToList())
        {
            job.Say(unit, UnitFacts.LeadSide, "left").Say(unit, UnitFacts.Power, unit == "W03" ? "battery" : "panel");
            if (unit != "W03")
                job.Say(unit, UnitFacts.EntrySide, unit == "W02B" ? "right" : "left").Say(unit, UnitFacts.EntryFromJamb, Size("1", "25"))
                    .Say(unit, UnitFacts.EntryBack, Size("3", "75")).Say(unit, UnitFacts.EntryBelowHead, Size("1 1/2", "38"));
            job.Say(unit, UnitFacts.Fabric, "Plain weave").Say(unit, UnitFacts.Colour, "Chalk").Say(unit, UnitFacts.Opacity, "blackout")
                .Say(unit, UnitFacts.HeadCover, "Fascia 4 in");
            job.Say(unit, UnitFacts.OrderWidth, Size("45 3/8", "1152")).Say(unit, UnitFacts.OrderHeight, Size("60 1/2", "1537"));
            job.Say(unit, UnitFacts.OrderedOn, "2026-06-22").Say(unit, UnitFacts.Acknowledgement, "A-4711").Say(unit, UnitFacts.Serial, $"SN-{unit}");
            job.Say(unit, UnitFacts.OpenGap, Size("1/2", "12")).Say(unit, UnitFacts.CloseGap, "0");
            job.Say(unit, UnitFacts.FreeCord, "0").Say(unit, UnitFacts.CordHeldBy, "none").Say(unit, UnitFacts.CordConfirmedBy, "R. Example");
        }
        foreach (var tag in (string[])["W01", "W02", "W03"])
            job.Do(SetFact.Typed(job.House, job.House.FindTag(tag)!.Item, WindowFacts.Escape, tag == "W03" ? "yes" : "no"));
        job.Say("W01", UnitFacts.Note, "Stops above the tap.").Say("W01", UnitFacts.Photo, "photos/w01_hung.jpg");
        return job;
    }

    private static void Power(TestJob job)
    {
        job.Add(ItemKind.Box, "A").SayOf("A", BoxFacts.Cable, "16/2").SayOf("A", BoxFacts.Left, "90 ft");
        job.SayOf("Roller", CoveringKindFacts.WarrantyTerm, "Five years from delivery").SayOf("Roller", CoveringKindFacts.WarrantyCovers, "Motor and tube")
            .SayOf("Roller", CoveringKindFacts.WarrantyCall, "The maker, 555 0102");
        job.Add(ItemKind.Panel, "P1");
        job.SayOf("P1", PanelFacts.Location, "Mechanical room, north wall").SayOf("P1", PanelFacts.Board, "Main board")
            .SayOf("P1", PanelFacts.Breaker, "14").SayOf("P1", PanelFacts.BreakerRating, "15").SayOf("P1", PanelFacts.ElseOnBreaker, "2");
        job.SayOf("Invented supply", PanelTypeFacts.InputCurrent, "2").SayOf("Roller", CoveringKindFacts.WithoutPower, "moved by hand")
            .SayOf("16/2", CableTypeFacts.Colours, "red, black").SayOf("16/2", CableTypeFacts.Plus, "red");
        job.SayOf("P1", PanelFacts.ConnectedBy, "Sparks Example").SayOf("P1", PanelFacts.Licence, "EL-0001").SayOf("P1", PanelFacts.ConnectedOn, "2026-08-11");
        foreach (var run in job.House.Runs.Select(r => r.Name).ToList())
        {
            job.Legs(run, ("9 ft", CablePlace.BetweenFloors), ("31 ft", CablePlace.InWall));
            job.Say(run, RunFacts.Cable, "16/2").Say(run, RunFacts.TailAtWindow, "48 in").Say(run, RunFacts.TailFound, "47 in")
                .Say(run, RunFacts.TailAtPanel, "60 in");
            job.Say(run, RunFacts.SpareCables, run == "W01" ? "1" : "0");
            Leg(job, run, 0, LegFacts.FireBarrier, "yes");
            Leg(job, run, 1, LegFacts.FireBarrier, "no");
            Leg(job, run, 0, LegFacts.Conduit, run == "W01" ? "metal" : "none");
            Leg(job, run, 1, LegFacts.Conduit, run == "W02A" ? "plastic" : "none");
            job.Say(run, RunFacts.LabelAtWindow, $"P1-{run}").Say(run, RunFacts.LabelAtPanel, $"P1-{run}");
            job.Say(run, RunFacts.FirstLoop, "0.41").Say(run, RunFacts.SecondLoop, "0.42").Say(run, RunFacts.Photo, $"photos/{run}-open-wall.jpg");
            job.Say(run, RunFacts.OpenVolts, "12.3").Say(run, RunFacts.LoadedVolts, "11.9").Say(run, RunFacts.Polarity, "right");
        }
        Leg(job, "W01", 0, LegFacts.SealedBy, "The fire-stopping crew");
        Leg(job, "W01", 0, LegFacts.SealSeenOn, "2026-04-17");
        job.Say("W01", RunFacts.SpareEnds, "behind P1 and in the head of W01");
        job.Do(Landing.SpreadOut(job.House));
    }

    private static void Leg(TestJob job, string run, int at, Fact fact, string typed) =>
        job.Do(SetFact.Typed(job.House, job.Run(run).Legs[at].Item, fact, typed));

    private static void Controls(TestJob job)
    {
        job.Add(ItemKind.Hub, "House hub").SayOf("House hub", HubFacts.Location, "Hall cupboard").Add(ItemKind.Remote, "Kitchen wall")
            .Add(ItemKind.Remote, "Bedside");
        job.SayOf("Kitchen wall", RemoteFacts.Room, "Kitchen").SayOf("Kitchen wall", RemoteFacts.Plate, "2-gang, left")
            .SayOf("Kitchen wall", RemoteFacts.Hub, "House hub");
        job.SayOf("Bedside", RemoteFacts.Room, "Bedroom").SayOf("Bedside", RemoteFacts.Hub, "House hub");
        foreach (var unit in job.House.Units.Select(u => u.Tag).ToList())
        {
            job.Say(unit, UnitFacts.Hub, "House hub").Say(unit, UnitFacts.HubName, $"{job.Unit(unit).Window.Room!.Name} {unit}");
            job.Do(Core.Decisions.Controls.Toggle(Remote(job, unit == "W01" ? "Kitchen wall" : "Bedside"), job.Unit(unit)));
        }
        job.Say("W02A", UnitFacts.Group, "Bed pair").Say("W02B", UnitFacts.Group, "Bed pair");
        job.Do(AddItems.Preset(Remote(job, "Bedside"), "Evening"));
        job.SayOf("Evening", PresetFacts.Position, "50", job.Unit("W02A").Id).SayOf("Evening", PresetFacts.Position, "0", job.Unit("W03").Id)
            .SayOf("Evening", PresetFacts.RunsAt, "19:30");
    }

    private static void People(TestJob job)
    {
        job.Add(ItemKind.Contact, "R. Example").SayOf("R. Example", ContactFacts.Part, "crew").SayOf("R. Example", ContactFacts.Telephone, "555 0101")
            .SayOf("R. Example", ContactFacts.AfterHandover, "yes").SayOf("R. Example", ContactFacts.Note, "Mornings");
        job.Add(ItemKind.Contact, "Box Example").SayOf("Box Example", ContactFacts.Part, "supplier").SayOf("Box Example", ContactFacts.Telephone, "555 0103");
        job.Do(AddItems.Visit(job.House, "Yearly look"));
        var visit = job.House.Visits.Single().Item;
        job.Do(SetFact.Typed(job.House, visit, VisitFacts.On, "2027-09-01"));
        job.Do(SetFact.Typed(job.House, visit, VisitFacts.Phase, "handover"));
        job.Do(AddItems.Visit(job.House, "Hang day"));
        var hung = job.House.Visits.Single(v => v.Name == "Hang day").Item;
        (Fact Fact, string Typed)[] day = [(VisitFacts.On, "2026-07-06"), (VisitFacts.Phase, "hang"), (VisitFacts.Worked, "6"), (VisitFacts.State, "done")];
        foreach (var (fact, typed) in day)
            job.Do(SetFact.Typed(job.House, job.House.Find(hung.Id)!, fact, typed));
        job.Do(SetFact.Typed(job.House, visit, VisitFacts.Expects, "yes", job.House.Contacts.First(c => c.Part == ContactPart.Crew).Id));
    }

    private static void OpenItems(TestJob job)
    {
        job.Do(PunchList.Write(job.House, job.Unit("W01").Item, "Touch up the sill paint", Phase.Hang));
        job.Say("W02B", UnitFacts.LeadSide, "right").Say("W03", UnitFacts.LeadSide, "right");
        var finding = Report(job.House).Findings.Single(f => f.Subject.Id == job.Unit("W02B").Id);
        job.Do(PunchList.Waive(finding, job.House, "Lead goes behind the fascia.", "RE"));
    }

    private static Remote Remote(TestJob job, string name) => job.House.Remotes.Single(r => r.Name == name);
}
