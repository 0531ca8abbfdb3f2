using Spectre.Console.Cli;

namespace Emberwright.Cli;

/// <summary>Hands the terminal to the commands; everything else has a constructor whose arguments are known here.</summary>
internal sealed class Registrar(Terminal terminal) : ITypeRegistrar, ITypeResolver
{
    private readonly Dictionary<Type, List<Func<object>>> known = new()
    {
        [typeof(Terminal)] = [() => terminal],
        [typeof(TimeProvider)] = [() => TimeProvider.System],
    };

    public ITypeResolver Build() => this;

    public void Register(Type service, Type implementation) => Add(service, () => Create(implementation));

    public void RegisterInstance(Type service, object implementation) => Add(service, () => implementation);

    public void RegisterLazy(Type service, Func<object> factory) => Add(service, factory);

    public object? Resolve(Type? type)
    {
        if (type is null) return null;
        if (known.TryGetValue(type, out var made)) return made[^1]();
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IEnumerable<>)) return All(type.GetGenericArguments()[0]);
        return type.IsAbstract || type.IsInterface ? null : Create(type);
    }

    private Array All(Type item)
    {
        var made = known.GetValueOrDefault(item, []);
        var all = Array.CreateInstance(item, made.Count);
        for (var i = 0; i < made.Count; i++) all.SetValue(made[i](), i);
        return all;
    }

    private object Create(Type type)
    {
        var constructor = type.GetConstructors().MinBy(c => c.GetParameters().Length)!;
        return constructor.Invoke([.. constructor.GetParameters().Select(p => Resolve(p.ParameterType))]);
    }

    private void Add(Type service, Func<object> make)
    {
        if (!known.TryGetValue(service, out var made)) known.Add(service, made = []);
        made.Add(make);
    }
}
