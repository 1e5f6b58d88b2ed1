using Gatewright.Store.Schema;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Gatewright.Store.Backup;

/// <summary>A table that goes into a backup.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Key">The columns of its key: the order its rows are written in.</param>
internal sealed record BackupTable(string Name, IReadOnlyList<BackupColumn> Columns, IReadOnlyList<string> Key)
{
    /// <summary>Made again from what is restored, or by the server itself: nobody has to sign in with an old cookie.</summary>
    private static readonly HashSet<string> LeftOut = ["snapshots", "data_protection_keys"];

    public string Select => $"SELECT {Quoted(Columns.Select(c => c.Name))} FROM \"{Name}\" ORDER BY {Quoted(Key)}";

    public string Insert =>
        $"INSERT INTO \"{Name}\" ({Quoted(Columns.Select(c => c.Name))}) VALUES ({string.Join(", ", Columns.Select((_, i) => $"@p{i}"))})";

    /// <summary>All of them, each after those its rows point to.</summary>
    public static IReadOnlyList<BackupTable> Of(StoreDb db)
    {
        List<ITable> left =
        [
            .. db.Model.GetRelationalModel().Tables.Where(t => !LeftOut.Contains(t.Name)).OrderBy(t => t.Name, StringComparer.Ordinal),
        ];
        var tables = new List<BackupTable>();
        while (left.Count > 0)
        {
            ITable next = left.First(t => t.ForeignKeyConstraints.All(f => f.PrincipalTable == t || !left.Contains(f.PrincipalTable)));
            left.Remove(next);
            tables.Add(Of(next));
        }

        return tables;
    }

    private static BackupTable Of(ITable table) => new(
        table.Name,
        [.. table.Columns.OrderBy(c => c.Name, StringComparer.Ordinal).Select(Of)],
        [.. table.PrimaryKey!.Columns.Select(c => c.Name)]);

    /// <summary>A column without a property is a document of JSON.</summary>
    private static BackupColumn Of(IColumn column)
    {
        IColumnMapping? mapping = column.PropertyMappings.Count > 0 ? column.PropertyMappings[0] : null;
        Type type = mapping is null ? typeof(System.Text.Json.JsonDocument) : mapping.TypeMapping.Converter?.ProviderClrType ?? mapping.TypeMapping.ClrType;
        bool counted = mapping is { Property.ValueGenerated: ValueGenerated.OnAdd }
            && mapping.Property.ClrType == typeof(int);
        return new(column.Name, Nullable.GetUnderlyingType(type) ?? type, column.StoreType, counted);
    }

    private static string Quoted(IEnumerable<string> names) => string.Join(", ", names.Select(name => $"\"{name}\""));
}
