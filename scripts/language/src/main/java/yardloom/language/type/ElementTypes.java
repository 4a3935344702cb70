package yardloom.language.type;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.List;
import java.util.Map;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import org.codehaus.groovy.ast.GenericsType;
import org.codehaus.groovy.ast.tools.GenericsUtils;

/** What lists and maps hold, as far as the compiler knows. */
public final class ElementTypes {
  private ElementTypes() {}

  /** The type that a host method gives: T is the receiver's element, K and V those of a map. */
  public static ClassNode result(Type type, ClassNode receiver) {
    if (type instanceof TypeVariable<?> variable) {
      return part(receiver, variable.getName());
    }
    if (type instanceof ParameterizedType list) {
      return listOf(result(list.getActualTypeArguments()[0], receiver));
    }
    return ClassHelper.make((Class<?>) type);
  }

  public static ClassNode listOf(ClassNode element) {
    ClassNode made = ClassHelper.LIST_TYPE.getPlainNodeReference();
    made.setGenericsTypes(new GenericsType[] {new GenericsType(TypeWords.boxed(element))});
    return made;
  }

  /** The type under which scripts hold a value: boxed, and List or Map for what is one. */
  public static ClassNode plain(ClassNode type) {
    Class<?> known = TypeWords.classOf(type);
    if (type.getGenericsTypes() == null && (known == List.class || known == Map.class)) {
      return ClassHelper.make(known).getPlainNodeReference();
    } else if (known == List.class) {
      return listOf(part(type, "T"));
    } else if (known == Map.class) {
      ClassNode made = ClassHelper.MAP_TYPE.getPlainNodeReference();
      made.setGenericsTypes(
          new GenericsType[] {
            new GenericsType(part(type, "K")), new GenericsType(part(type, "V"))
          });
      return made;
    }
    return TypeWords.boxed(type);
  }

  /** The element type of a list (T), or key (K) or value (V) type of a map; Object if unknown. */
  public static ClassNode part(ClassNode container, String which) {
    boolean map = which.equals("K") || which.equals("V");
    ClassNode wanted =
        map
            ? container.getName().equals(TypeWords.ENTRY.getName())
                    || container.implementsInterface(TypeWords.ENTRY)
                ? TypeWords.ENTRY
                : ClassHelper.MAP_TYPE
            : ClassHelper.LIST_TYPE;
    ClassNode typed = GenericsUtils.parameterizeType(container, wanted);
    GenericsType[] generics = typed.getGenericsTypes();
    int index = which.equals("V") ? 1 : 0;
    if (generics == null || generics.length <= index || generics[index].isPlaceholder()) {
      return ClassHelper.OBJECT_TYPE;
    }
    return generics[index].getType();
  }
}
