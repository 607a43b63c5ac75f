using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

/// <summary>A house that was handed over: W01 and W02 on panel P1, hub Attic and remote Hall with a preset for W01, every step marked, signed.</summary>
internal static class ServedHouse
{
    public static TestJob Of()
    {
        var job = Jobs.Roughed("W02", Jobs.Roughed()).WithPanel().Add(ItemKind.Hub, "Attic").Add(ItemKind.Remote, "Hall").Add(ItemKind.Remote, "Bed");
        foreach (var tag in new[] { "W01", "W02" })
        {
            job.Say(tag, RunFacts.Panel, "P1").Say(tag, RunFacts.Output, tag == "W01" ? "1" : "2")
                .Say(tag, RunFacts.OpenVolts, "24").Say(tag, RunFacts.LoadedVolts, "23").Say(tag, RunFacts.Polarity, "right")
                .Say(tag, RunFacts.WentDead, "this")
                .Say(tag, UnitFacts.Serial, $"A-{tag}").Say(tag, UnitFacts.OutOfLevel, "0").Say(tag, UnitFacts.Setback, "1").Say(tag, UnitFacts.FreeCord, "0")
                .Say(tag, UnitFacts.CordHeldBy, "none").Say(tag, UnitFacts.CordConfirmedBy, "Ash Example")
                .Say(tag, UnitFacts.Hub, "Attic").Say(tag, UnitFacts.HubName, $"Shade {tag}").Say(tag, UnitFacts.OpenGap, "1").Say(tag, UnitFacts.CloseGap, "0")
                .SayOf("Hall", RemoteFacts.Moves, "yes", job.Unit(tag).Id);
        }
        job.Do(j => AddItems.Preset(j.House.Remotes[0], "Evening")).SayOf("Evening", PresetFacts.Position, "40", job.Unit("W01").Id);
        job.SayOf("P1", PanelFacts.ConnectedBy, "Jo Example").SayOf("P1", PanelFacts.Licence, "E-1").SayOf("P1", PanelFacts.ConnectedOn, "2026-06-01")
            .SayOf("P1", PanelFacts.Breaker, "12").SayOf("Test house", HouseFacts.AcceptedBy, "Al Owner")
            .SayOf("Test house", HouseFacts.AcceptedOn, "2026-10-01");
        foreach (var walker in Progress.Walkers(job.House).ToList())
        {
            foreach (var step in PhaseNames.All.SelectMany(p => StepList.Of(p, walker)).ToList())
                job.Do(MarkStep.Done(Progress.Walkers(job.House).Single(w => w.Id == walker.Id), step));
        }
        return job;
    }

    public static TestJob Serve(this TestJob job, string line, DateOnly? today = null) =>
        job.Do(QuickService.Read(job.House, line, today ?? new DateOnly(2027, 3, 2)));

    /// <summary>The ids of what waits of a unit, a panel or the house.</summary>
    public static string[] Open(this TestJob job, string name) =>
        [.. Progress.Walkers(job.House).Where(w => w.Name == name).SelectMany(w => StepList.All.Where(s => s.Subject == w.Item.Kind)
            .Where(s => (w is not Unit unit || s.Applies(unit)) && w.MarkOf(s) is null)).Select(s => s.Id)];
}
