using System.Data;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace TrimOut.Benchmarks.Terminals;

/// <summary>The peer: the same rows in a plain table of the library.</summary>
internal static class TablePeer
{
    public static void Run(int rows)
    {
        using var table = new DataTable();
        foreach (var column in new[] { "Unit", "Kind", "Room", "Next" })
            table.Columns.Add(column);
        for (var at = 1; at <= rows; at++)
            table.Rows.Add($"W{at:000}", "Roller", $"Room {at / 10}", "Opening recorded");
        using var app = Application.Create();
        app.Init(DriverRegistry.Names.ANSI);
        using var window = new Runnable { Width = Dim.Fill(), Height = Dim.Fill() };
        window.Add(new TableView
        { Width = Dim.Fill(), Height = Dim.Fill(), Table = new DataTableSource(table), FullRowSelect = true, CollectionNavigator = null });
        app.Run(window);
    }
}
