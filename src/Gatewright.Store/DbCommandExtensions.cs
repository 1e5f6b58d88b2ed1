using System.Data.Common;

namespace Gatewright.Store;

/// <summary>Commands and their parameters, the same way on every engine.</summary>
internal static class DbCommandExtensions
{
    /// <summary>A command inside a transaction.</summary>
    public static DbCommand Command(this DbTransaction transaction, string sql)
    {
        DbCommand command = transaction.Connection!.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = sql;
        return command;
    }

    public static void Add(this DbCommand command, string name, object value)
    {
        DbParameter parameter = command.CreateParameter();
        parameter.ParameterName = name;
        parameter.Value = value;
        command.Parameters.Add(parameter);
    }
}
