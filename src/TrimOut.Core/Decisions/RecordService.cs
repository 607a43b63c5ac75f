using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>What somebody says of something that was done in service.</summary>
/// <param name="Kind">What was done.</param>
/// <param name="On">The day on which it was done.</param>
public sealed record ServiceSaid(ServiceKind Kind, DateOnly On)
{
    /// <summary>Who did it; null where nobody says.</summary>
    public string? By { get; init; }

    /// <summary>What was wrong; null where nobody says.</summary>
    public string? Cause { get; init; }

    /// <summary>The serial of the unit that hangs there now; null while nobody read it.</summary>
    public string? NewSerial { get; init; }

    /// <summary>The number of the warranty claim; null where none was made.</summary>
    public string? Claim { get; init; }

    /// <summary>What became of the claim; null while that is open.</summary>
    public ClaimOutcome? Outcome { get; init; }
}

/// <summary>Records what was done in service, and has asked again what that undid: all in one change, which one undo takes back.</summary>
public static class RecordService
{
    private const int MostNames = 6;

    /// <summary>The change that records it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="about">What it was done to: a unit, a panel, a hub, a remote, or the house itself.</param>
    /// <param name="said">What is said of it.</param>
    public static Result<Draft> Of(House house, Item about, ServiceSaid said)
    {
        if (Refuse(house, about, said) is { } refusal)
            return refusal;
        var (did, day) = (ServiceFacts.Kind.Show(said.Kind, house), ServiceFacts.On.Show(said.On, house));
        var since = Service.Replacements(house, about).FirstOrDefault(s => s.On > said.On);
        // What was replaced once more since was hung, paired and set since: nothing of the earlier one is left to be done.
        var again = since is not null ? []
            : AskedAgain.By(house, about, said.Kind).Where(a => a.Step.Id != "serial-noted" || said.NewSerial is null).ToList();
        var draft = new Draft($"{(about.Kind == ItemKind.House ? "" : house.NameOf(about) + " ")}{did} on {day}{Asking(again)}")
            .New(ItemKind.Service, about.Id, out var id)
            .Put(id, ServiceFacts.Kind, said.Kind)
            .Put(id, ServiceFacts.On, said.On)
            .PutIf(id, ServiceFacts.By, said.By)
            .PutIf(id, ServiceFacts.Cause, said.Cause)
            .PutIf(id, ServiceFacts.Claim, said.Claim)
            .PutIf(id, ServiceFacts.Outcome, said.Outcome);
        if (about.Kind == ItemKind.Unit && said.Kind == ServiceKind.Replaced)
        {
            draft = draft.PutIf(id, ServiceFacts.OldSerial, since is not null ? since.TakenOff : about.Get(UnitFacts.Serial))
                .PutIf(id, ServiceFacts.NewSerial, said.NewSerial);
            if (since is null)
                draft = WithSerialOfNow(draft, house, about, said.NewSerial);
        }
        // What hangs there now came, whatever was read of the box before it, and of the one that was to come again.
        if (again.Exists(a => a.Step.Phase == Phase.Receive) && (about.Get(UnitFacts.Arrival) != Arrival.Arrived
            || about.Latest(UnitFacts.ReorderedOn)?.Stored is not null))
            draft = draft.Put(about.Id, UnitFacts.Arrival, Arrival.Arrived);
        foreach (var (subject, step) in again)
        {
            draft = draft.PutStored(subject.Id, step.Field, null).PutStored(subject.Id, AskedAgain.Field(step), id);
            foreach (var fact in AskedAgain.ReadAgain(step).Where(f => f != UnitFacts.Serial))
            {
                if (Progress.Holder(subject, fact) is { } holder && holder.Latest(fact.Name)?.Stored is not null)
                    draft = draft.PutStored(holder.Id, fact.Name, null);
            }
        }
        return draft;
    }

    /// <summary>The change that takes a record out of the house, with the serial from before for a unit that has the one of this record.</summary>
    internal static Draft WithSerialBefore(Draft removal, Service service) => SerialAfterRemoval(service) is not (var unit, var serial) ? removal
        : removal.PutStored(unit.Id, UnitFacts.Serial.Name, serial)
            with
        { What = $"{removal.What}; serial of {service.House.NameOf(unit)}: {serial ?? "to be read again"}" };

    /// <summary>The serial that a unit has once a record is removed, null for none that is known; nothing where the record leaves it alone.</summary>
    /// <param name="service">The record.</param>
    public static (Item Unit, string? Serial)? SerialAfterRemoval(Service service) =>
        service is { ReplacesUnit: true, About: { } unit } && Service.Replacements(service.House, unit)[^1].Id == service.Id
            && unit.Get(UnitFacts.Serial) is { } now && SameName.Comparer.Equals(service.NewSerial ?? "", now) ? (unit, service.TakenOff) : null;

    /// <summary>Which kinds of service something can have.</summary>
    public static bool CanBe(Item about, ServiceKind kind) => (about.Kind, kind) switch
    {
        (ItemKind.House, _) => kind is ServiceKind.YearlyVisit or ServiceKind.Repaired,
        (_, ServiceKind.YearlyVisit) => false,
        (ItemKind.Unit, ServiceKind.BatteryChanged) => about.Get(UnitFacts.Power) == PowerSource.Battery,
        (ItemKind.Unit, _) => true,
        (ItemKind.Remote, _) => kind != ServiceKind.MotorReplaced,
        (ItemKind.Panel or ItemKind.Hub, _) => kind is not (ServiceKind.MotorReplaced or ServiceKind.BatteryChanged),
        _ => false,
    };

    /// <summary>Why nothing can have been done on a day: it is still to come. Null where it is not, or where nobody knows which day it is.</summary>
    internal static Refusal? RefuseDay(House house, DateOnly day, DateOnly? today) => day > today
        ? new Refusal($"{ServiceFacts.On.Show(day, house)} is still to come: plan it as a visit under People and dates (P), and record it "
            + "once it is done.") : null;

    private static Refusal? Refuse(House house, Item about, ServiceSaid said)
    {
        if (!CanBe(about, said.Kind))
        {
            return new Refusal(said.Kind switch
            {
                ServiceKind.YearlyVisit => "A yearly visit is of the house: leave out what it is of.",
                ServiceKind.MotorReplaced => $"{house.NameOf(about)} has no motor: write replaced, part replaced or repaired.",
                ServiceKind.BatteryChanged => about.Kind == ItemKind.Unit
                    ? $"{house.NameOf(about)} has no battery by what is noted of it: write part replaced, or put its power right first."
                    : $"{house.NameOf(about)} has no battery: write part replaced or repaired.",
                _ => about.Kind == ItemKind.House ? "Say what it was done to: a unit by its tag, a panel, a hub or a remote by its name."
                    : $"{house.NameOf(about)} can't be in service: write a unit by its tag, a panel, a hub or a remote by its name.",
            });
        }
        if (said.NewSerial is not { } serial)
            return null;
        return about.Kind != ItemKind.Unit || said.Kind != ServiceKind.Replaced
            ? new Refusal("Only a unit that was replaced has another serial: write it into the cause where it is that of a part.")
            : Service.Replacements(house, about).FirstOrDefault(s => s.On > said.On) is { } since
            ? Taken(since.TakenOff) ? new Refusal($"{serial} is the serial of the unit that was taken off. Read the one that was put in, or leave it out.")
                : Taken(about.Get(UnitFacts.Serial)) ? new Refusal(
                    $"{serial} is the serial of the unit that hangs there now ({house.NameOf(since.Item)}): see which one was put in earlier, or leave it out.")
                : null
            : Taken(about.Get(UnitFacts.Serial))
                ? new Refusal($"{serial} is the serial of the unit that was taken off. Read the one that hangs there now, or leave it out until somebody does.")
                : null;

        bool Taken(string? before) => SameName.Comparer.Equals(before ?? "", serial);
    }

    /// <summary>Puts the serial of the unit that hangs there from now on, and notes at the replacement before which one that had put in.</summary>
    private static Draft WithSerialOfNow(Draft draft, House house, Item unit, string? serial)
    {
        if (unit.Get(UnitFacts.Serial) is { } now && Service.Replacements(house, unit) is [.., var last] && last.NewSerial == now
            && last.Item.Get(ServiceFacts.NewSerial) != now)
            draft = draft.Put(last.Id, ServiceFacts.NewSerial, now);
        return serial is not null || unit.Latest(UnitFacts.Serial)?.Stored is not null ? draft.PutStored(unit.Id, UnitFacts.Serial.Name, serial) : draft;
    }

    /// <summary>What is asked again, for the history.</summary>
    private static string Asking(List<(Subject Subject, Step Step)> again)
    {
        if (again.Count == 0)
            return "";
        var steps = string.Join(", ", again.Select(a => a.Step.Label).Distinct());
        var names = again.Select(a => a.Subject.Name).Distinct().ToList();
        return names.Count == 1 ? $"; asked again: {steps}"
            : $"; asked again of {string.Join(", ", names.Take(MostNames))}"
                + $"{(names.Count > MostNames ? $" and {NumberText.Plain(names.Count - MostNames)} more" : "")}: {steps}";
    }
}
