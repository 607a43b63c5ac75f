using System.Collections.Immutable;

namespace TrimOut.HouseFile.Schedules;

/// <summary>What a column of a window schedule can hold.</summary>
/// <param name="Name">Its name, as <c>--column name=Header</c> says it.</param>
/// <param name="Headers">What such columns are usually headed, in lower case and letters only, the surest first.</param>
/// <param name="Help">What it is taken for.</param>
public sealed record ScheduleField(string Name, ImmutableArray<string> Headers, string Help)
{
    /// <summary>The window's tag.</summary>
    public static ScheduleField Tag { get; } = new("tag", ["tag", "mark", "windowmark", "windowtag", "no", "number", "windowno", "windownumber", "windowid",
        "id", "ref", "reference", "symbol", "pos", "position", "nr", "fensternr", "fenster", "marca", "núm", "número", "ventana",
        "window", "windows"], "the window's tag");

    /// <summary>The room.</summary>
    public static ScheduleField Room { get; } = new("room", ["room", "roomname", "location", "space", "area", "where",
        "raum", "zimmer", "estancia", "habitación", "local"],
        "the room, made when the house has none of that name");

    /// <summary>The floor of the room.</summary>
    public static ScheduleField Floor { get; } = new("floor", ["floor", "level", "storey", "story",
        "geschoss", "etage", "stockwerk", "planta", "piso", "nivel"],
        "the floor of a new room; the room itself where no room is said");

    /// <summary>The rough width.</summary>
    public static ScheduleField Width { get; } = new("width",
        ["roughwidth", "rowidth", "roughopeningwidth", "openingwidth", "rohbaubreite", "rohöffnungbreite", "rohbaumaßbreite", "huecoancho",
            "width", "w", "wide", "unitwidth", "breite", "ancho", "anchura"], "rough width");

    /// <summary>The rough height.</summary>
    public static ScheduleField Height { get; } = new("height",
        ["roughheight", "roheight", "roughopeningheight", "openingheight", "rohbauhöhe", "rohöffnunghöhe", "rohbaumaßhöhe", "huecoalto",
            "height", "h", "ht", "high", "unitheight", "höhe", "alto", "altura"], "rough height");

    /// <summary>Width and height in one.</summary>
    public static ScheduleField Size { get; } = new("size", ["size", "sizecode", "unitsize", "nominalsize", "windowsize", "roughopening", "ro", "wxh",
        "dimensions", "sizewxh", "roughopeningwxh", "rowxh", "bxh",
        "größe", "maße", "abmessungen", "rohbaumaß", "rohöffnung", "tamaño", "medidas", "dimensiones", "hueco"],
        "width by height: 4050 is 4'-0\" by 5'-0\"; 36 x 60; 915 x 1830 mm");

    /// <summary>Where it looks out to.</summary>
    public static ScheduleField Facing { get; } = new("facing", ["facing", "orientation", "elevation", "aspect", "direction", "ausrichtung",
        "himmelsrichtung", "orientación"], "where it looks out to");

    /// <summary>What it takes to work at its head.</summary>
    public static ScheduleField Reach { get; } = new("reach", ["reach", "access"], "floor, ladder or scaffold");

    /// <summary>Inside or outside mount.</summary>
    public static ScheduleField Mount { get; } = new("mount", ["mount", "mounting", "montage", "montageart", "montaje"], "inside or outside");

    /// <summary>The kind of covering.</summary>
    public static ScheduleField Kind { get; } = new("kind", ["kind", "covering", "coveringkind", "coveringtype", "treatment", "shade", "shadetype",
        "behang", "behangart"],
        "the kind of covering, by its name in the kit");

    /// <summary>The side on which the cable reaches the unit.</summary>
    public static ScheduleField LeadSide { get; } = new("lead", ["leadside", "lead"], "the side on which the cable reaches the unit, from inside the room");

    /// <summary>What moves it.</summary>
    public static ScheduleField Power { get; } = new("power", ["power", "powersource"], "panel, plug-in or battery");

    /// <summary>Why it gets no covering.</summary>
    public static ScheduleField LeftOut { get; } = new("left-out", ["leftout", "leftoutbecause"],
        "why the window gets no covering, or yes where no reason is known; empty where it gets one");

    /// <summary>How many windows of that tag.</summary>
    public static ScheduleField Quantity { get; } = new("qty", ["qty", "quantity", "count", "pcs", "anzahl", "stück", "stk", "menge",
        "cantidad", "uds"], "how many; W03 times 2 makes W03-1 and W03-2");

    /// <summary>Height of the sill, kept in the note.</summary>
    public static ScheduleField Sill { get; } = new("sill", ["sill", "sillheight", "sillht", "brüstung", "brüstungshöhe", "antepecho", "alféizar"],
        "height of the sill, kept in the note");

    /// <summary>Remarks.</summary>
    public static ScheduleField Note { get; } = new("note", ["note", "notes", "remark", "remarks", "comment", "comments", "bemerkung", "bemerkungen",
        "anmerkung", "hinweis", "nota", "notas", "observaciones"], "the note");

    /// <summary>All of them, in the order in which they are looked for.</summary>
    public static ImmutableArray<ScheduleField> All { get; } = [Tag, Room, Floor, Width, Height, Size, Facing, Reach, Mount, Kind, LeadSide, Power, LeftOut,
        Quantity, Sill, Note];

    /// <summary>Whether its cells are lengths, of which a bare number has the unit of the column.</summary>
    internal bool IsLength => this == Width || this == Height || this == Size || this == Sill;

    /// <summary>The field of that name; null when there is none.</summary>
    public static ScheduleField? Find(string name) => All.FirstOrDefault(f => f.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
}
