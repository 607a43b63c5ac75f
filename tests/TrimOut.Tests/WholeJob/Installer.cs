using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Tests;
using TrimOut.Screens.Walk;

namespace TrimOut.Tests.WholeJob;

/// <summary>Somebody who does the whole job by keyboard: walks every phase, answers what is asked, mends or waives every stop.</summary>
internal sealed class Installer(TerminalUser user)
{
    private House House => user.House;

    private CheckReport Report => user.Shell.Context.Report;

    public void DoTheWholeJob()
    {
        foreach (var phase in PhaseNames.All)
        {
            GetReadyFor(phase);
            Walk(phase);
            MendStops(upTo: phase);
        }
    }

    /// <summary>Types what to have spare and how long parts take, and reads on the parts list what to call off for the pull.</summary>
    public void CallOffParts()
    {
        TypeOfHouse(HouseFacts.Spares, "10 % screws, 1 16/2");
        TypeOfHouse(HouseFacts.PartsLead, "10");
        user.Press("7").Press([.. Enumerable.Repeat("down", 10)]).Press("enter").Sees("Parts list");
        for (var headings = 0; headings < 9 && !user.Screen.Contains("Call-off by phase", StringComparison.Ordinal); headings++)
            user.Press("right");
        user.Sees("Call-off by phase").Sees("2026-06-05");
        TypeOfHouse(HouseFacts.RoughInPartsOn, "2026-06-01");
    }

    /// <summary>Types what a phase took where it is seen beside what the marks show.</summary>
    public void TypeHours(Phase phase, string hours)
    {
        user.Press("1", "P", "T").Press([.. Enumerable.Repeat("down", (int)phase)]).Press("enter").Type(hours).Sees(hours);
    }

    private void TypeOfHouse(Fact fact, string text)
    {
        user.Press("0");
        GoTo(House.Job, fact);
        user.Press("enter").Type(text);
    }

    /// <summary>Takes in the photos of a folder, all that are placed.</summary>
    public void TakePhotosFrom(string folder)
    {
        user.Press("1", "B", "O").Type(folder).Sees("would be copied beside this house");
        user.Press("enter", "y").Sees("taken in, of");
    }

    /// <summary>The folder with photos of the open wall, taken in before the rough-in is walked; null where their paths are typed.</summary>
    public string? PhotosOfTheWall { get; init; }

    /// <summary>Records in one line what was done in service, and does again what that asked for.</summary>
    public void Serve(string line)
    {
        user.Press("1", "H", "n").Type(line).Sees("In service");
        Assert.True(user.Shell.Typing is null, user.Screen);
        foreach (var phase in PhaseNames.All)
            Walk(phase);
    }

    private void GetReadyFor(Phase phase)
    {
        if (phase == Phase.RoughIn)
        {
            LayLegs();
            SayWhereAirMoves();
            SayWhatHoldsBackFire();
            if (PhotosOfTheWall is { } folder)
                TakePhotosFrom(folder);
        }
        if (phase == Phase.Measure)
            ShareOpenings();
        if (phase == Phase.Power)
            HangPanels();
        if (phase == Phase.Pair)
            SetUpControls();
        if (phase == Phase.Limits)
            StorePresets();
    }

    private void Walk(Phase phase)
    {
        user.Press("2");
        while (((WalkScreen)user.Shell.Screen).Phase < phase)
            user.Press("]");
        while (((WalkScreen)user.Shell.Screen).Phase > phase)
            user.Press("[");
        for (var keys = 0; !Progress.Of(House, phase).Complete; keys++)
        {
            Assert.True(keys < 3000, $"{phase} does not come to an end:\n{user.Screen}");
            var before = (House, user.Shell.Screen);
            user.Press("space");
            AnswerWhileAsked();
            if ((House, user.Shell.Screen) == before)
                user.Press("down");
        }
    }

    private void AnswerWhileAsked()
    {
        while (user.Shell.Typing is { } typing)
        {
            if (typing.Text.Length > 0)
                user.Press("enter");
            else if (typing.Entry.InPlace is { } place)
                user.Type(Answer(place));
            else if (typing.Entry.Warning is not null)
                user.Type("Seen; it is mended before the phase is over");
            else
                Assert.Fail($"Nobody expected to be asked for {typing.Entry.Label}:\n{user.Screen}");
            Assert.True(user.Shell.Typing?.Refused is null, $"Refused: {user.Shell.Typing?.Refused}\n{user.Screen}");
        }
    }

    private string Answer(string place)
    {
        var slash = place.IndexOf('/', StringComparison.Ordinal);
        var item = House.Find(place[..slash])!;
        return Answers.For(House, item, FactTable.Find(item.Kind, place[(slash + 1)..])!);
    }

    /// <summary>Every run without a way gets one leg, typed on the unit's sheet from the cables screen.</summary>
    private void LayLegs()
    {
        user.Press("4").Press("home");
        for (var at = 0; at < House.Runs.Length; at++)
        {
            var run = House.Runs[at];
            if (run.LegsLength is null && run.Legs.IsEmpty)
            {
                user.Press("l").Type("across 40 ft in wall");
            }
            user.Press("down");
        }
    }

    /// <summary>Every leg across of a run that is asked for it says that no air moves around it.</summary>
    private void SayWhereAirMoves()
    {
        foreach (var unit in House.Units.Where(u => Waits(u, "air-asked")).ToList())
        {
            foreach (var leg in unit.Run!.Legs.Where(l => l.AsksAboutAir && l.AirMoves is null).ToList())
            {
                OpenSheet(unit).GoTo(leg.Item, LegFacts.AirMoves);
                user.Press("enter").Type("no");
            }
        }
    }

    /// <summary>Every leg of a run that is asked for it says that it goes through no fire barrier.</summary>
    private void SayWhatHoldsBackFire()
    {
        foreach (var unit in House.Units.Where(u => Waits(u, "fire-stops-seen")).ToList())
        {
            foreach (var leg in unit.Run!.Legs.Where(l => l.ThroughFireBarrier is null).ToList())
            {
                OpenSheet(unit).GoTo(leg.Item, LegFacts.FireBarrier);
                user.Press("enter").Type("no");
            }
        }
    }

    /// <summary>Every unit that is asked for a preset gets a place in one of a remote that moves it.</summary>
    private void StorePresets()
    {
        user.Press("5");
        foreach (var unit in House.Units.Where(u => Waits(u, "preset-stored")).ToList())
        {
            GoToRemote(House.Units.Single(u => u.Id == unit.Id).Remotes.First());
            user.Press("home");
            for (var down = 0; down < House.Units.TakeWhile(u => u.Id != unit.Id).Count(); down++)
                user.Press("down");
            user.Press("%").Type("Evening").Type("40");
        }
    }

    private static bool Waits(Unit unit, string step) => StepList.Find(step) is { } of && StepList.Of(of.Phase, unit).Contains(of) && unit.MarkOf(of) is null
        && Progress.Missing(unit, of).Count > 0;

    /// <summary>Where a window has several units, each gets its part of the opening.</summary>
    private void ShareOpenings()
    {
        foreach (var unit in House.Units.Where(u => u.Window.Units.Length > 1 && u.Item.Get(UnitFacts.PartWidth) is null).ToList())
        {
            OpenSheet(unit).GoTo(unit.Item, UnitFacts.PartWidth);
            var part = (unit.Window.KnownWidth!.Value / unit.Window.Units.Length - Core.Units.Length.FromInches(1))
                .RoundDown(Core.Units.Length.FromInches(0, 1, 8));
            user.Press("enter").Type(Core.Units.LengthText.Show(part, House.DisplayUnits));
        }
    }

    private void HangPanels()
    {
        user.Press("3");
        while (House.Panels.Sum(p => p.Type?.Outputs ?? 0) < House.Runs.Length)
            user.Press("n", "enter");
        if (House.Runs.Any(r => r.Panel is null || r.Output is null))
            user.Press("p", "p");
    }

    private void SetUpControls()
    {
        user.Press("5");
        if (House.Hubs.IsEmpty)
            user.Press("N", "enter");
        foreach (var room in House.Rooms.Where(r => r.Windows.Any(w => !w.LeftOut)).ToList())
        {
            if (House.Remotes.All(r => r.Room?.Id != room.Id))
                user.Press("n").Type(room.Name);
            else
                GoToRemote(House.Remotes.First(r => r.Room?.Id == room.Id));
            user.Press("R");
        }
    }

    private void GoToRemote(Remote remote)
    {
        for (var at = 0; at < House.Remotes.Length; at++)
            user.Press("left");
        for (var at = 0; at < House.Remotes.IndexOf(House.Remotes.First(r => r.Id == remote.Id)); at++)
            user.Press("right");
    }

    /// <summary>Goes through the punch list until no stop of the phases so far is open: mends what can be mended by the tape, waives the rest.</summary>
    private void MendStops(Phase upTo)
    {
        user.Press("6");
        for (var rounds = 0; ; rounds++)
        {
            Assert.True(rounds < 300, $"The stops do not come to an end:\n{user.Screen}");
            var rows = PunchRows.Of((PunchScreen)user.Shell.Screen, user.Shell.Context);
            var at = rows.ToList().FindIndex(r => r.Finding is { Open: true, Check.Severity: Severity.Stop } f && f.Check.Phase <= upTo);
            if (at < 0)
                return;
            user.Press("home");
            for (var down = 0; down < at; down++)
                user.Press("down");
            var finding = rows[at].Finding!;
            if (Mends.For(finding, House) is { } text)
            {
                user.Press("enter", "enter").Type(text);
                Assert.True(user.Shell.Typing is null, $"{finding.Check.Id} of {House.NameOf(finding.Subject)}, \"{text}\": {user.Shell.Typing?.Refused}");
                user.Press("6");
                Assert.DoesNotContain(Report.OpenStops,
                    f => f.Check == finding.Check && f.Subject.Id == finding.Subject.Id && f.Found.Mends == finding.Found.Mends
                    && f.Found.Message == finding.Found.Message);
            }
            else
            {
                user.Press("a").Type("Looked at on site; agreed with the owner to leave it").Type("TO");
            }
        }
    }

    private Installer OpenSheet(Unit unit)
    {
        user.Press("1", "*", "g").Type(unit.Tag);
        user.Press("enter");
        return this;
    }

    private void GoTo(Item item, Fact fact)
    {
        user.Press("home");
        for (var down = 0; ((SheetScreen)user.Shell.Screen).Current?.Place != $"{item.Id}/{fact.Name}"; down++)
        {
            Assert.True(down < 200, $"{fact.Label} is not on the sheet:\n{user.Screen}");
            user.Press("down");
        }
    }
}
