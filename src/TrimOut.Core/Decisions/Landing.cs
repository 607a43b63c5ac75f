using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Outputs;

namespace TrimOut.Core.Decisions;

/// <summary>Lands home runs on panel outputs.</summary>
public static class Landing
{
    /// <summary>Lands a run on an output. Where another run is there, the two change places.</summary>
    public static Result<Draft> Land(HomeRun run, Panel panel, int output)
    {
        if (panel.Type?.Outputs is not { } outputs)
            return new Refusal($"How many outputs {panel.Name} has is not known: it stands on the sheet of its type, "
                + $"{(panel.Type is { } type ? type.Name : "and no type is chosen")}.");
        if (output < 1 || output > outputs)
            return new Refusal($"{panel.Name} has outputs 1 to {outputs}: there is no {output}.");
        var there = panel.RunAt(output);
        if (there?.Id == run.Id)
            return new Refusal($"{run.Name} is on {panel.Name} output {output} already.");
        var draft = At(new Draft($"{run.Name} landed on {panel.Name} output {output}"), run, panel, output);
        if (there is null)
            return draft;
        return run is { Panel: { } fromPanel, Output: { } fromOutput }
            ? At(draft with { What = $"{run.Name} and {there.Name} changed places" }, there, fromPanel, fromOutput)
            : Off(draft with { What = $"{run.Name} landed on {panel.Name} output {output} in place of {there.Name}" }, there);
    }

    /// <summary>Takes a run off its output.</summary>
    public static Result<Draft> TakeOff(HomeRun run) => run.Panel is null && run.Output is null
        ? new Refusal($"{run.Name} is on no output.")
        : Off(new Draft($"{run.Name} taken off its output"), run);

    /// <summary>
    /// Lands every run that is on no output yet by the output plan: fewest panels, loaded alike, smallest peak, rooms together; landed runs stay.
    /// </summary>
    public static Result<Draft> SpreadOut(House house)
    {
        var order = HouseOutputs.Order(house);
        var waiting = order.Runs.Count(r => r.Landed is null);
        if (waiting == 0)
            return new Refusal("Every run is on an output already.");
        return OutputPlanner.Solve(order).Then<Draft>(plan => plan.Runs.Where(r => r.Run.Landed is null).Aggregate(
            new Draft($"{waiting} runs spread over the panels"),
            (draft, r) => At(draft, house.Runs.Single(run => run.Id == r.Run.Id), house.FindPanel(r.At.Panel)!, r.At.Output)));
    }

    private static Draft At(Draft draft, HomeRun run, Panel panel, int output) => draft
        .Put(run.Id, RunFacts.Panel, new ItemRef(panel.Id))
        .Put(run.Id, RunFacts.Output, output);

    private static Draft Off(Draft draft, HomeRun run) => draft
        .PutStored(run.Id, RunFacts.Panel.Name, null)
        .PutStored(run.Id, RunFacts.Output.Name, null);
}
