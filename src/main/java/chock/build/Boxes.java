package chock.build;

import java.util.Map;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.MethodNode;

/** Turns the value on top into one of another type, where the language does so by itself. */
final class Boxes {
    private static final Map<Type, String> BOXES = Map.of(Type.BOOLEAN_TYPE, "java/lang/Boolean", Type.BYTE_TYPE, "java/lang/Byte",
            Type.SHORT_TYPE, "java/lang/Short", Type.CHAR_TYPE, "java/lang/Character", Type.INT_TYPE, "java/lang/Integer",
            Type.LONG_TYPE, "java/lang/Long", Type.FLOAT_TYPE, "java/lang/Float", Type.DOUBLE_TYPE, "java/lang/Double");
    private static final Type OBJECT = Type.getObjectType("java/lang/Object");

    private Boxes() { }

    /** The class that a primitive is boxed in. */
    static String of(Type primitive) {
        return BOXES.get(primitive);
    }

    static void turn(MethodNode method, Type from, Type to) {
        if (from.equals(to) || to.equals(Type.VOID_TYPE) && from.equals(Type.VOID_TYPE)) {
            return;
        }
        if (to.equals(Type.VOID_TYPE)) {
            method.visitInsn(from.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
        } else if (isPrimitive(from) && isPrimitive(to)) {
            widen(method, from, to);
        } else if (isPrimitive(from)) {
            String box = of(from);
            method.visitMethodInsn(Opcodes.INVOKESTATIC, box, "valueOf", "(" + from + ")L" + box + ";", false);
        } else if (isPrimitive(to)) {
            Type held = BOXES.entrySet().stream().filter(e -> e.getValue().equals(from.getInternalName())).map(Map.Entry::getKey)
                    .findFirst().orElse(to);
            if (!from.getInternalName().equals(of(held))) {
                method.visitTypeInsn(Opcodes.CHECKCAST, of(held));
            }
            method.visitMethodInsn(Opcodes.INVOKEVIRTUAL, of(held), held.getClassName() + "Value", "()" + held, false);
            widen(method, held, to);
        } else if (!to.equals(OBJECT)) {
            method.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
        }
    }

    private static boolean isPrimitive(Type type) {
        return BOXES.containsKey(type);
    }

    private static void widen(MethodNode method, Type from, Type to) {
        boolean small = from.getSort() <= Type.INT;
        if (from.equals(to) || small && to.getSort() <= Type.INT) {
            return;
        }
        int step = small ? (to.equals(Type.LONG_TYPE) ? Opcodes.I2L : to.equals(Type.FLOAT_TYPE) ? Opcodes.I2F : Opcodes.I2D)
                : from.equals(Type.LONG_TYPE) ? (to.equals(Type.FLOAT_TYPE) ? Opcodes.L2F : Opcodes.L2D) : Opcodes.F2D;
        method.visitInsn(step);
    }
}
