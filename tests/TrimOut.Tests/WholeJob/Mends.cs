using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Tests.WholeJob;

/// <summary>What is typed into the field that fixes a finding; where nothing typed can mend it, it is waived.</summary>
internal static class Mends
{
    public static string? For(Finding finding, House house)
    {
        var item = house.Find(finding.Found.Mends.Item)!;
        var unit = finding.Subject.Kind switch
        {
            ItemKind.Unit => house.FindUnit(finding.Subject.Id),
            ItemKind.Run => house.FindUnit(finding.Subject.Under),
            ItemKind.Window => house.FindWindow(finding.Subject.Id)?.Units.FirstOrDefault(),
            _ => null,
        };
        return finding.Check.Id switch
        {
            "lead-away-from-motor" => unit!.Kind!.MotorEnd == MotorEnd.Left ? "left" : "right",
            "tail-under-half-width" or "tail-short-of-motor" =>
                Shown(house, Length.Max(Length.FromInches(120), unit!.Window.KnownWidth!.Value.RoundUp(Length.FromInches(1)) * 2)),
            "run-past-kit-table" or "volts-short-at-unit" when finding.Found.Mends.Field == RunFacts.Cable.Name
                && house.NameOf(unit!.Run!.Cable!.Item) != "16/2" => "16/2",
            "cable-shared" => "",
            "label-twice" => unit!.Tag,
            "output-shared" or "output-past-panel" => FreeOutput(unit!.Run!.Panel!),
            "hub-name-twice" => $"{unit!.Window.Room!.Name} {unit.Tag}",
            "box-late" => "2026-09-01",
            "box-label-off" => unit!.Tag,
            "mains-unsigned" or "step-without-evidence" or "proof-outdated" or "measures-incomplete" =>
                Answers.For(house, item, FactTable.Find(item.Kind, finding.Found.Mends.Field)!),
            _ => null,
        };
    }

    private static string? FreeOutput(Panel panel) =>
        Enumerable.Range(1, panel.Type!.Outputs!.Value).Where(o => panel.RunAt(o) is null).Select(o => o.ToString(CultureInfo.InvariantCulture))
            .FirstOrDefault();

    private static string Shown(House house, Length length) => length.Show(house.DisplayUnits);
}
