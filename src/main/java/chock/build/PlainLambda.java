package chock.build;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.FieldNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** A class in place of a lambda or of a method that is named as one. */
final class PlainLambda {
    private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";
    private static final String ONLY = "ONLY";
    private static final String OF = "of";

    private final InvokeDynamicInsnNode lambda;
    private final ClassNode made = new ClassNode();
    private final Type shape;
    private final Type[] held;

    private PlainLambda(InvokeDynamicInsnNode lambda, ClassNode within, int number) {
        this.lambda = lambda;
        this.shape = Type.getReturnType(lambda.desc);
        this.held = Type.getArgumentTypes(lambda.desc);
        made.version = within.version;
        made.access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
        made.name = within.name + PlainClasses.MADE + number;
        made.superName = "java/lang/Object";
        made.interfaces = List.of(shape.getInternalName());
    }

    /** The classes that take the place of the lambdas in this one. */
    static List<ClassNode> rewrite(ClassNode node) {
        List<ClassNode> all = new ArrayList<>();
        for (MethodNode method : node.methods) {
            for (AbstractInsnNode step : method.instructions) {
                if (step instanceof InvokeDynamicInsnNode lambda && lambda.bsm.getOwner().equals(METAFACTORY)
                        && lambda.bsm.getName().equals("metafactory")) {
                    PlainLambda plain = new PlainLambda(lambda, node, all.size());
                    plain.write();
                    all.add(plain.made);
                    method.instructions.set(step, plain.instead());
                }
            }
        }
        return all;
    }

    private AbstractInsnNode instead() {
        return held.length == 0 ? new FieldInsnNode(Opcodes.GETSTATIC, made.name, ONLY, shape.getDescriptor())
                : new MethodInsnNode(Opcodes.INVOKESTATIC, made.name, OF, lambda.desc, false);
    }

    private void write() {
        for (int i = 0; i < held.length; i++) {
            made.fields.add(new FieldNode(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, "held" + i, held[i].getDescriptor(), null, null));
        }
        String taking = Type.getMethodDescriptor(Type.VOID_TYPE, held);
        MethodNode begin = method(Opcodes.ACC_PRIVATE, "<init>", taking);
        begin.visitVarInsn(Opcodes.ALOAD, 0);
        begin.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
        int local = 1;
        for (int i = 0; i < held.length; i++) {
            begin.visitVarInsn(Opcodes.ALOAD, 0);
            begin.visitVarInsn(held[i].getOpcode(Opcodes.ILOAD), local);
            begin.visitFieldInsn(Opcodes.PUTFIELD, made.name, "held" + i, held[i].getDescriptor());
            local += held[i].getSize();
        }
        end(begin, Type.VOID_TYPE);
        if (held.length == 0) {
            made.fields.add(new FieldNode(Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONLY, shape.getDescriptor(), null, null));
            MethodNode once = method(Opcodes.ACC_STATIC, "<clinit>", "()V");
            make(once, taking);
            once.visitFieldInsn(Opcodes.PUTSTATIC, made.name, ONLY, shape.getDescriptor());
            end(once, Type.VOID_TYPE);
        } else {
            MethodNode of = method(Opcodes.ACC_STATIC, OF, lambda.desc);
            make(of, taking);
            end(of, shape);
        }
        does();
    }

    private void make(MethodNode method, String taking) {
        method.visitTypeInsn(Opcodes.NEW, made.name);
        method.visitInsn(Opcodes.DUP);
        int local = 0;
        for (Type one : held) {
            method.visitVarInsn(one.getOpcode(Opcodes.ILOAD), local);
            local += one.getSize();
        }
        method.visitMethodInsn(Opcodes.INVOKESPECIAL, made.name, "<init>", taking, false);
    }

    /** The one method: hands on what is held and what it is given to the method behind the lambda. */
    private void does() {
        Type erased = (Type) lambda.bsmArgs[0];
        Handle behind = (Handle) lambda.bsmArgs[1];
        Type exact = (Type) lambda.bsmArgs[2];
        MethodNode method = method(Opcodes.ACC_PUBLIC, lambda.name, erased.getDescriptor());
        boolean begins = behind.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        if (begins) {
            method.visitTypeInsn(Opcodes.NEW, behind.getOwner());
            method.visitInsn(Opcodes.DUP);
        }
        List<Type> wanted = wanted(behind);
        for (int i = 0; i < held.length; i++) {
            method.visitVarInsn(Opcodes.ALOAD, 0);
            method.visitFieldInsn(Opcodes.GETFIELD, made.name, "held" + i, held[i].getDescriptor());
            Boxes.turn(method, held[i], wanted.get(i));
        }
        int local = 1;
        for (int i = 0; i < erased.getArgumentTypes().length; i++) {
            Type given = erased.getArgumentTypes()[i];
            method.visitVarInsn(given.getOpcode(Opcodes.ILOAD), local);
            local += given.getSize();
            Type known = exact.getArgumentTypes()[i];
            Boxes.turn(method, given, known);
            Boxes.turn(method, known, wanted.get(held.length + i));
        }
        method.visitMethodInsn(call(behind), behind.getOwner(), behind.getName(), behind.getDesc(), behind.isInterface());
        Type result = begins ? Type.getObjectType(behind.getOwner()) : Type.getReturnType(behind.getDesc());
        Boxes.turn(method, result, erased.getReturnType());
        end(method, erased.getReturnType());
    }

    private static List<Type> wanted(Handle behind) {
        List<Type> wanted = new ArrayList<>(List.of(Type.getArgumentTypes(behind.getDesc())));
        if (behind.getTag() != Opcodes.H_INVOKESTATIC && behind.getTag() != Opcodes.H_NEWINVOKESPECIAL) {
            wanted.add(0, Type.getObjectType(behind.getOwner()));
        }
        return wanted;
    }

    private static int call(Handle behind) {
        return switch (behind.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            // Within a nest a private method is called like any other, and never one that overrides it.
            default -> behind.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    }

    private MethodNode method(int access, String name, String desc) {
        MethodNode method = new MethodNode(Opcodes.ASM9, access, name, desc, null, null);
        made.methods.add(method);
        method.visitCode();
        return method;
    }

    private static void end(MethodNode method, Type result) {
        method.visitInsn(result.getOpcode(Opcodes.IRETURN));
        method.visitMaxs(0, 0);
        method.visitEnd();
    }
}
