using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>What was replaced after the handover, and all that is to be read, paired and set once more.</summary>
internal static class ServicePage
{
    public static void Write(Installer installer)
    {
        foreach (var service in installer.Truth.Services)
            Write(installer, service);
    }

    /// <summary>The name of a service in the book.</summary>
    public static string NameOf(RealService service) => $"{service.Name} in service";

    private static void Write(Installer installer, RealService service)
    {
        var (house, book) = (installer.Truth, installer.Book);
        service.Changes?.Invoke(house);
        if (!book.Has(service.To, service.Name))
            return;
        var about = book.House.Find(book.IdOf(service.To, service.Name))!;
        var said = new ServiceSaid(service.What, service.On)
        {
            By = "The crew",
            Cause = service.Cause.Length > 0 ? service.Cause : null,
            NewSerial = service.Serial,
            Claim = service.Claim,
            Outcome = service.Outcome,
        };
        if (!book.AddService(NameOf(service), about, said))
            return;
        if (house.Panels.FirstOrDefault(p => service.To == ItemKind.Panel && p.Name == service.Name) is { } panel)
        {
            PoweredPage.Write(installer, panel, service.On);
            foreach (var phase in Enum.GetValues<Phase>())
                book.MarkAll(book.House.FindPanel(about.Id)!, panel.Name, phase);
        }
        foreach (var unit in Touched(house, service).Where(u => book.Has(ItemKind.Unit, u.Key)).ToList())
        {
            if (service is { To: ItemKind.Unit, What: Core.Facts.ServiceKind.Replaced })
                ReceivedPage.ReadBox(installer, unit);
            DoOnceMore(installer, unit);
        }
    }

    private static IEnumerable<RealUnit> Touched(RealHouse house, RealService service) => service.To switch
    {
        ItemKind.Unit => house.Units.Where(u => u.Key == service.Name),
        ItemKind.Panel => house.Wired.Where(u => u.Panel?.Name == service.Name),
        ItemKind.Hub => house.Units.Where(u => u.Hub == service.Name),
        _ => house.Remotes.Where(r => r.Name == service.Name).SelectMany(r => r.Moves),
    };

    private static void DoOnceMore(Installer installer, RealUnit unit)
    {
        HungPage.Write(installer, unit);
        if (unit is { Power: Core.Facts.PowerSource.Panel, Cable: not null, Panel: not null })
            PoweredPage.Write(installer, unit);
        LimitsPage.Write(installer, unit);
        var forgotten = installer.Truth.Services.SelectMany(s => s.NotDoneAgain).Where(n => n.Key == unit.Key).Select(n => n.Phase).ToHashSet();
        foreach (var phase in Enum.GetValues<Phase>().Where(p => !forgotten.Contains(p)))
            installer.Book.MarkAll(installer.Book.Unit(unit.Key), unit.Key, phase);
    }
}
