using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LabVolatility.Web.Layout;

/// <summary>Counts the statements that one piece of work sends to the database.</summary>
public sealed class StatementCount : IObserver<DiagnosticListener>, IObserver<KeyValuePair<string, object?>>
{
    private static readonly AsyncLocal<StatementCount?> Running = new();

    private int _statements;

    private StatementCount()
    {
    }

    public int Statements => _statements;

    /// <summary>Begins counting for everything awaited from here on.</summary>
    public static StatementCount Begin()
    {
        var count = new StatementCount();
        Running.Value = count;
        return count;
    }

    /// <summary>Listens to the database's own diagnostics, once for the program.</summary>
    public static IDisposable Listen() => DiagnosticListener.AllListeners.Subscribe(new StatementCount());

    void IObserver<DiagnosticListener>.OnNext(DiagnosticListener value)
    {
        if (value.Name == DbLoggerCategory.Name)
            value.Subscribe(this, (name, _, _) => name == RelationalEventId.CommandExecuting.Name && Running.Value is not null);
    }

    void IObserver<KeyValuePair<string, object?>>.OnNext(KeyValuePair<string, object?> value)
    {
        if (value.Key == RelationalEventId.CommandExecuting.Name && Running.Value is { } count)
            Interlocked.Increment(ref count._statements);
    }

    void IObserver<DiagnosticListener>.OnCompleted()
    {
    }

    void IObserver<DiagnosticListener>.OnError(Exception error)
    {
    }

    void IObserver<KeyValuePair<string, object?>>.OnCompleted()
    {
    }

    void IObserver<KeyValuePair<string, object?>>.OnError(Exception error)
    {
    }
}
